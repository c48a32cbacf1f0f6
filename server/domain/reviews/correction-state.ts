/** Where a correction can stand. The first two are open. */
export const CORRECTION_STATES = ["given", "showing", "held", "retired"] as const;

/** Where a correction stands. */
export type CorrectionState = (typeof CORRECTION_STATES)[number];

/** Did it take? What a check says of a correction on a new clip. */
export const VERDICTS = ["not_yet", "partly", "yes"] as const;

/** What a check says of a correction. */
export type Verdict = (typeof VERDICTS)[number];

/** The verdicts that leave a correction open. */
export const OPEN_VERDICTS = ["not_yet", "partly"] as const satisfies readonly Verdict[];

/** A verdict that leaves a correction open. */
export type OpenVerdict = (typeof OPEN_VERDICTS)[number];

/** The verdicts as they are written on a screen. */
export const VERDICT_WORDS: Record<Verdict, string> = { not_yet: "Not yet", partly: "Partly", yes: "Yes" };

/** What can happen to a correction; `given` comes first and once, `confirmed` is seen in person. */
export const CORRECTION_EVENT_KINDS = ["given", ...VERDICTS, "confirmed", "retired"] as const;

/** One thing that can happen to a correction. */
export type CorrectionEventKind = (typeof CORRECTION_EVENT_KINDS)[number];

/** One thing that happened to a correction. `reason` is needed for `retired` and is the note of a verdict. */
export interface CorrectionEvent {
  kind: CorrectionEventKind;
  atMs: number;
  reason: string;
}

/** How a correction stands after its events, and how it came there. */
export interface CorrectionStanding {
  state: CorrectionState;
  /** It held once and came back; stays marked until it holds again. */
  cameBack: boolean;
  /** How many times in a row the last verdicts were yes. */
  yesInARow: number;
  /** Each state it entered, oldest first; an event that changed nothing adds no step. */
  history: readonly { state: CorrectionState; fromMs: number }[];
}

/** Why an event cannot happen to a correction. */
export type CorrectionRefusal = "already_retired" | "held_already" | "given_already" | "reason_missing";

/** The standing after the event, or why the event cannot be. */
export type CorrectionMove =
  | { ok: true; standing: CorrectionStanding }
  | { ok: false; refusal: CorrectionRefusal };

/** The standing of a correction that has just been given. */
export function givenAt(atMs: number): CorrectionStanding {
  return { state: "given", cameBack: false, yesInARow: 0, history: [{ state: "given", fromMs: atMs }] };
}

/**
 * What an event makes of a correction. Not yet: given, and marked as come back when it held. Partly: showing. Yes:
 * showing the first time, held the second time in a row; on a held one it stays held. Confirmed in person: held at
 * once. Retired: for good, with a reason, and only while it is open; what held stays on record as held.
 */
export function moveCorrection(standing: CorrectionStanding, event: CorrectionEvent): CorrectionMove {
  const refusal = refusalOf(standing, event);
  if (refusal !== null) return { ok: false, refusal };
  const yesInARow = event.kind === "yes" ? standing.yesInARow + 1 : 0;
  const state = stateAfter(standing.state, event.kind, yesInARow);
  const cameBack =
    state !== "held" && (standing.cameBack || (standing.state === "held" && event.kind === "not_yet"));
  const history =
    state === standing.state ? standing.history : [...standing.history, { state, fromMs: event.atMs }];
  return { ok: true, standing: { state, cameBack, yesInARow, history } };
}

/**
 * The standing after all its events, oldest first.
 * @throws Error when the first is not `given` or one of them cannot have happened (a broken record)
 */
export function standingOf(events: readonly CorrectionEvent[]): CorrectionStanding {
  const [first, ...rest] = events;
  if (first?.kind !== "given") throw new Error("A correction begins with being given.");
  return rest.reduce<CorrectionStanding>((standing, event) => {
    const move = moveCorrection(standing, event);
    if (!move.ok) throw new Error(`A correction's record is broken: ${event.kind}, ${move.refusal}.`);
    return move.standing;
  }, givenAt(first.atMs));
}

/** Whether the athlete still works on it. */
export function isOpen(state: CorrectionState): boolean {
  return state === "given" || state === "showing";
}

/** An athlete cannot work on everything: at most five at a time. Common practice, no source; a setting. */
export const MAX_OPEN_CORRECTIONS = 5;

/**
 * Whether one more correction may be given. One that came back is not a new one and is never refused, so `openCount`
 * may exceed `max`.
 */
export function mayAddCorrection(openCount: number, max: number = MAX_OPEN_CORRECTIONS): boolean {
  return openCount < max;
}

function refusalOf(standing: CorrectionStanding, event: CorrectionEvent): CorrectionRefusal | null {
  if (event.kind === "given") return "given_already";
  if (standing.state === "retired") return "already_retired";
  if (event.kind !== "retired") return null;
  if (standing.state === "held") return "held_already";
  return event.reason.trim() === "" ? "reason_missing" : null;
}

function stateAfter(state: CorrectionState, kind: CorrectionEventKind, yesInARow: number): CorrectionState {
  switch (kind) {
    case "given":
    case "not_yet":
      return "given";
    case "partly":
      return "showing";
    case "yes":
      return state === "held" || yesInARow >= 2 ? "held" : "showing";
    case "confirmed":
      return "held";
    case "retired":
      return "retired";
  }
}
