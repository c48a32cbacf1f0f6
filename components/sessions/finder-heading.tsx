import { PageHeading } from "@/components/ui/page-heading";
import type { Answers } from "@/components/wire/answers";
import { dayInWords } from "@/server/domain/time/words";
import type { TimeSearch } from "./time-search";

type FollowUp = Answers["sessions"]["planning"]["followUp"];

/** What a {@link FinderHeading} takes; nothing while nobody is chosen. */
export interface FinderHeadingProps {
  names?: readonly string[];
  followUp?: FollowUp;
  search?: TimeSearch;
}

/** The head of the finder: for whom, and whether it follows up a settled round or moves a session. */
export function FinderHeading({ names = [], followUp = null, search }: FinderHeadingProps) {
  const isMove = Boolean(search?.moveSessionId);
  const isFollowUp =
    search?.roundId !== undefined && search.roundId !== null && search.roundId === followUp?.roundId;
  return (
    <PageHeading
      place={names.length > 0 ? names.join(", ") : "Calendar"}
      question={isMove ? "Where can it move to?" : "Which time fits?"}
      detail={isFollowUp && followUp ? followUpInWords(followUp) : undefined}
    />
  );
}

/** "A follow-up of the last round, to be held by Fri 4 Dec: what was corrected on video is confirmed on a mound." */
export function followUpInWords({ toDay, isLate }: NonNullable<FollowUp>): string {
  const by = isLate
    ? "its time has passed, so the next two weeks are searched"
    : `to be held by ${dayInWords(toDay)}`;
  return `A follow-up of the last settled round, ${by}: what was corrected on video is confirmed in person.`;
}
