import type { RateInput } from "@/server/api/agreement/shapes";
import { type JudgementScore, judgementScore } from "@/server/domain/mechanics/judgement";

/** What stands for a frame on which the checkpoint could not be seen. */
export const UNSEEN = "unseen";

/** What a coach chose for a frame: "0" to "3", or that it could not be seen. */
export type JudgedAs = `${JudgementScore}` | typeof UNSEEN;

/** A choice as it is sent. @example answerOf("2") // { kind: "judged", score: 2 } */
export function answerOf(chosen: JudgedAs): RateInput["answer"] {
  return chosen === UNSEEN
    ? { kind: "unseen" }
    : { kind: "judged", score: judgementScore.parse(Number(chosen)) };
}

/** What a key chooses; null for a key of something else. @example chosenBy("u") // "unseen" */
export function chosenBy(key: string): JudgedAs | null {
  if (key.toLowerCase() === "u") return UNSEEN;
  return /^[0-3]$/.test(key) ? (key as JudgedAs) : null;
}
