import type { AwaitedRow, OwedRow } from "@/server/api/read-queue";

/** What can be done to a round from the queue, beside opening it. */
export const ROUND_ACTS = ["put_back", "hand_over", "ask_retake", "withdraw"] as const;

/** One of {@link ROUND_ACTS}. */
export type RoundAct = (typeof ROUND_ACTS)[number];

/** Each act as a menu names it; the dots say that something is asked first. */
export const ROUND_ACT_WORDS: Record<RoundAct, string> = {
  put_back: "Put back into the queue",
  hand_over: "Hand over…",
  ask_retake: "Ask for a new clip…",
  withdraw: "Withdraw…",
};

/** The one who looks at the queue. */
export interface Viewer {
  personId: string;
  isCoach: boolean;
}

/** What the first press on a row does. */
export type FirstAct = "take" | "go_on" | "look";

/** Nobody's round is taken, one's own gone on with, anybody else's looked at. */
export function firstActOf(row: OwedRow, viewer: Viewer): FirstAct {
  if (row.coachPersonId === viewer.personId) return "go_on";
  return row.state === "received" && viewer.isCoach ? "take" : "look";
}

/** The acts the menu of an owed round offers this viewer, in its order. */
export function actsOn(row: OwedRow, viewer: Viewer): RoundAct[] {
  const isOwn = row.coachPersonId === viewer.personId;
  const mayAsk = viewer.isCoach && (isOwn || row.coachPersonId === null);
  return ROUND_ACTS.filter((act) => {
    if (act === "put_back") return isOwn && row.state === "taken";
    if (act === "ask_retake") return mayAsk;
    return act === "hand_over" || row.state !== "answered";
  });
}

/** The acts on a round that waits for a family. */
export function actsOnAwaited(row: AwaitedRow): RoundAct[] {
  return ROUND_ACTS.filter(
    (act) => (act === "hand_over" && row.state === "sent") || (act === "withdraw" && row.mayBeWithdrawn),
  );
}

/** Which of the owed rounds are in sight. */
export const QUEUE_PARTS = ["mine", "free", "all"] as const;

/** One of {@link QUEUE_PARTS}. */
export type QueuePart = (typeof QUEUE_PARTS)[number];

/** Each part as it is named on the screen. */
export const QUEUE_PART_WORDS: Record<QueuePart, string> = {
  mine: "Mine",
  free: "Nobody has yet",
  all: "All",
};

/** Whether a round belongs to a part. Mine are those I have, and those of my athletes that nobody has yet. */
export function isIn(part: QueuePart, row: OwedRow | AwaitedRow, viewer: Viewer): boolean {
  if (part === "all") return true;
  if (part === "free") return row.coachPersonId === null;
  return row.coachPersonId === viewer.personId || (row.coachPersonId === null && row.isOwnAthlete);
}
