import type { RefusalDetail } from "@/server/domain/errors/refusal";

/** Where a round can stand. The first five are its line; the last three stand beside it. */
export const ROUND_STATES = [
  "received",
  "taken",
  "sent",
  "answered",
  "settled",
  "retake",
  "withdrawn",
  "lapsed",
] as const;

/** Where a round stands. */
export type RoundState = (typeof ROUND_STATES)[number];

/** What can happen to a round. `received` makes it; every other kind moves it. */
export const ROUND_EVENT_KINDS = [
  "received",
  "taken",
  "put_back",
  "handed_over",
  "retake_asked",
  "clip_replaced",
  "sent",
  "answered",
  "settled",
  "withdrawn",
  "lapsed",
] as const;

/** One thing that can happen to a round. */
export type RoundEventKind = (typeof ROUND_EVENT_KINDS)[number];

/** What moves a round that is there already. */
export type RoundStep = Exclude<RoundEventKind, "received">;

/** What a step needs to know beside the state. */
export interface RoundFacts {
  /** The state in which the retake was asked for; null outside `retake`. */
  retakeFrom: RoundState | null;
  /** Open corrections of the athlete that the check has given no verdict and not retired. */
  awaitingVerdict: number;
}

/** The next state, or why there is none. */
export type RoundMove =
  | { ok: true; state: RoundState }
  | { ok: false; refusal: Extract<RefusalDetail, { reason: "round_state" | "draft_incomplete" }> };

/** Each step by the states it may start from. A new clip returns a retake to where it was asked for. */
const STEPS: Record<RoundStep, Partial<Record<RoundState, RoundState | "where_it_was">>> = {
  taken: { received: "taken" },
  put_back: { taken: "received" },
  handed_over: { received: "taken", taken: "taken", sent: "sent", answered: "answered" },
  retake_asked: { received: "retake", taken: "retake", answered: "retake" },
  clip_replaced: { retake: "where_it_was" },
  sent: { taken: "sent" },
  answered: { sent: "answered" },
  settled: { sent: "settled", answered: "settled" },
  withdrawn: { received: "withdrawn", taken: "withdrawn", retake: "withdrawn" },
  lapsed: { sent: "lapsed", retake: "lapsed" },
};

/** Each step as a participle: "it cannot be ...". */
export const ROUND_STEP_WORDS: Record<RoundStep, string> = {
  taken: "taken",
  put_back: "put back",
  handed_over: "handed over",
  retake_asked: "sent back for a new clip",
  clip_replaced: "given another clip",
  sent: "sent",
  answered: "answered",
  settled: "settled",
  withdrawn: "withdrawn",
  lapsed: "closed as unanswered",
};

/**
 * Where a step takes a round. A round settles from `answered` once every open correction has a verdict, and from
 * `sent` when none is open any more (nothing but keeps, or all confirmed in person). A round whose review is out is
 * never withdrawn, so neither is a retake of its reply: it lapses. Settled, withdrawn and lapsed are ends: a reply
 * that comes later is a new round, into which the open corrections carry over.
 * @throws Error when a retake does not know where it was asked for (a broken record)
 */
export function moveRound(state: RoundState, step: RoundStep, facts: RoundFacts): RoundMove {
  const next = STEPS[step][state];
  if (next === undefined || (step === "withdrawn" && facts.retakeFrom === "answered")) {
    return { ok: false, refusal: { reason: "round_state", action: ROUND_STEP_WORDS[step], state } };
  }
  if (step === "settled" && facts.awaitingVerdict > 0) {
    return {
      ok: false,
      refusal: { reason: "draft_incomplete", missing: [verdictsMissing(facts.awaitingVerdict)] },
    };
  }
  if (next !== "where_it_was") return { ok: true, state: next };
  if (facts.retakeFrom === null) throw new Error("A retake does not say in which state it was asked for.");
  return { ok: true, state: facts.retakeFrom };
}

/** "1 correction has no verdict", "3 corrections have no verdict". */
export function verdictsMissing(count: number): string {
  return count === 1 ? "1 correction has no verdict" : `${count} corrections have no verdict`;
}

const ENDS: readonly RoundState[] = ["settled", "withdrawn", "lapsed"];

/** Whether nothing moves a round out of this state. */
export function isEnded(state: RoundState): boolean {
  return ENDS.includes(state);
}

/** The states in which the academy owes the next step, so that a promise runs. */
export const OWED_STATES = ["received", "taken", "answered"] as const satisfies readonly RoundState[];

/** Whether the academy owes the next step. In `retake` and `sent` it is the family's turn. */
export function isOwed(state: RoundState): boolean {
  return OWED_STATES.some((owed) => owed === state);
}
