import type { ReactNode } from "react";
import { DefinitionList } from "@/components/ui/definition-list";
import { PageHeading } from "@/components/ui/page-heading";
import type { Answers } from "@/components/wire/answers";
import { SESSION_KIND } from "@/server/domain/calendar/session-kind";
import { SESSION_STATE_WORDS } from "@/server/domain/calendar/session-state";
import { dayOf } from "@/server/domain/time/calendar-day";
import { dayInWords, timeInWords } from "@/server/domain/time/words";

/** What whoever may see a session sees of it. */
export type SessionHead = Answers["sessions"]["forStaff"]["head"];

/** The question a session's page answers: before it, after it, or when it did not come to it. */
export function sessionQuestion(state: SessionHead["state"], before: string): string {
  if (state === "logged") return "Who came, and what was done?";
  return state === "cancelled" || state === "no_show" ? "What became of this session?" : before;
}

/** What a {@link SessionHeading} takes. */
export interface SessionHeadingProps {
  head: SessionHead;
  question: string;
  actions?: ReactNode;
}

/** When, where and with whom a session is held, and how it stands. */
export function SessionHeading({ head, question, actions }: SessionHeadingProps) {
  const { zone, startsAtMs, endsAtMs, siteName, laneName, coachName, secondAdult, state, cancelReason } =
    head;
  const day = dayInWords(dayOf(startsAtMs, zone), { long: true });
  const minutes = Math.round((endsAtMs - startsAtMs) / 60_000);
  return (
    <>
      <PageHeading
        place={`${day}, ${timeInWords(startsAtMs, zone)} to ${timeInWords(endsAtMs, zone)} (${zone})`}
        question={question}
        actions={actions}
      />
      <DefinitionList
        items={[
          { term: "What", detail: `${SESSION_KIND[head.kind].label}, ${minutes} min` },
          { term: "Where", detail: `${siteName}, ${laneName}` },
          { term: "Coach", detail: coachName },
          ...(secondAdult ? [{ term: "Second adult", detail: adultInWords(secondAdult) }] : []),
          { term: "State", detail: cancelReason ? `Cancelled: ${cancelReason}` : SESSION_STATE_WORDS[state] },
        ]}
      />
    </>
  );
}

function adultInWords({ kind, name }: NonNullable<SessionHead["secondAdult"]>): string {
  return kind === "guardian" ? `${name}, guardian, watches` : `${name}, of the staff`;
}
