import type { CorrectionView } from "@/server/api/reviews/shapes";
import type { CorrectionEventKind } from "@/server/domain/reviews/correction-state";
import { dayOf } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";

const HAPPENING_WORDS: Record<CorrectionEventKind, string> = {
  given: "given",
  not_yet: "not yet",
  partly: "partly",
  yes: "yes",
  confirmed: "confirmed in person",
  retired: "no longer wanted",
};

/** One thing that happened to a correction, in a line. @example "Wed 2 Dec: partly. Better from the stretch." */
export function happeningInWords(happening: CorrectionView["happenings"][number], zone: string): string {
  const reason = happening.reason.trim();
  const day = dayInWords(dayOf(happening.atMs, zone));
  return `${day}: ${HAPPENING_WORDS[happening.kind]}.${reason === "" ? "" : ` ${reason}`}`;
}

/** How often a correction's drill was practised. @example "4 days, last Tue 1 Dec" */
export function practiceInWords(practisedOn: readonly string[]): string {
  const last = practisedOn.at(-1);
  if (last === undefined) return "none ticked";
  return `${practisedOn.length === 1 ? "1 day" : `${practisedOn.length} days`}, last ${dayInWords(last)}`;
}
