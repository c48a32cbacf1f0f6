import type { CalendarDay } from "@/server/domain/time/calendar-day";
import type { AthleteEvidence } from "./athlete-evidence";
import type { ChangeOutcome } from "./change";
import { changeInWords } from "./change-in-words";
import type { CameraView } from "./delivery";
import type { SeriesKind } from "./observation";

/** What may be said of one series of a checkpoint since one correction. */
export interface CheckpointChange {
  id: string;
  correctionId: string;
  kind: SeriesKind;
  /** Null for what was seen in person. */
  view: CameraView | null;
  lastSeenOn: CalendarDay | null;
  outcome: ChangeOutcome | "too_few";
  /** The fixed words, as they are. */
  words: string;
  /** The figures that go with them, in sentences. */
  figures: string[];
}

const ORDER: readonly CheckpointChange["outcome"][] = [
  "worse",
  "improved",
  "changed",
  "no_change",
  "too_few",
];

/**
 * Everything that was looked at, as it stands among all ({@link AthleteEvidence}): what got worse first, then what
 * improved, then no change, then too few; of one kind the latest seen first.
 * @example of a record without a correction: none
 */
export function checkpointChanges({ series }: AthleteEvidence): CheckpointChange[] {
  return series
    .flatMap(({ series: { kind, view, days, unseen }, since }) =>
      since.map(({ correctionId, among: { id, since: change } }): CheckpointChange => {
        const [, ...figures] = changeInWords(kind, change, unseen);
        const outcome = change.kind === "change" ? change.outcome : "too_few";
        const lastSeenOn = days.at(-1)?.day ?? null;
        return { id, correctionId, kind, view, lastSeenOn, outcome, words: change.words, figures };
      }),
    )
    .sort((a, b) => ORDER.indexOf(a.outcome) - ORDER.indexOf(b.outcome) || laterFirst(a, b));
}

function laterFirst({ lastSeenOn: a }: CheckpointChange, { lastSeenOn: b }: CheckpointChange): number {
  return a === b ? 0 : (a ?? "") > (b ?? "") ? -1 : 1;
}
