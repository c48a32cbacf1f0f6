import type { Answers } from "@/components/wire/answers";
import { SESSION_KIND } from "@/server/domain/calendar/session-kind";
import { SESSION_STATE_WORDS } from "@/server/domain/calendar/session-state";

/** A session as a board has it. */
export type BoardSession = Answers["calendar"]["day"]["boards"][number]["lanes"][number]["sessions"][number];

/** How a session stands in a word, or nothing where booked goes without saying. */
export function standingWord(session: Pick<BoardSession, "state" | "isUnlogged">): string {
  if (session.isUnlogged) return "not logged";
  return session.state === "booked" ? "" : SESSION_STATE_WORDS[session.state].toLowerCase();
}

/** Who comes, in short: one or two by name, more by number. */
export function whoInShort(names: readonly string[]): string {
  if (names.length > 2) return `${names.length} athletes`;
  return names.join(", ");
}

/**
 * A session in one sentence, for those who hear the page and for the line under a board.
 * @example "17:00 to 17:30, bullpen, Kit Marsh, with Cole Rivers, Lane 1, 20 pitches planned."
 */
export function boardSentence(session: BoardSession): string {
  const { timeWords, kind, names, coachName, laneName, plannedPitches, withoutRoom } = session;
  const planned = plannedPitches > 0 ? `${plannedPitches} pitches planned` : "";
  const parts = [
    timeWords,
    SESSION_KIND[kind].label.toLowerCase(),
    names.join(", "),
    `with ${coachName}`,
    laneName,
  ];
  const said = [...parts, planned, standingWord(session)].filter((part) => part !== "").join(", ");
  return [`${said}.`, ...withoutRoom.map((words) => `${words}.`)].join(" ");
}
