import { PHASE_WORDS, type Phase } from "@/server/domain/mechanics/delivery";
import {
  type CorrectionEventKind,
  type CorrectionStanding,
  moveCorrection,
  type Verdict,
} from "./correction-state";
import type { CheckDraft } from "./draft";
import { asTheDeliveryRuns } from "./recap";

/** A correction as a check finds it. `frame` is the one it was given on, counted from 0. */
export interface CheckedCorrection {
  id: string;
  phase: Phase;
  frame: number | null;
  checkpointName: string;
  cue: string;
  standing: CorrectionStanding;
}

/** What a check does to one correction. `reason` is the note of a verdict, or why it is retired. */
export interface CheckOutcome {
  correctionId: string;
  kind: Extract<CorrectionEventKind, Verdict | "retired">;
  reason: string;
  /** Where it was seen on the new clip; both null when it was on no one frame. */
  clipId: string | null;
  frame: number | null;
  standing: CorrectionStanding;
}

/**
 * What a check does to the athlete's corrections, in the delivery's order. A verdict left open does nothing. The draft
 * must be ready ({@link missingToSettle} found nothing).
 * @throws Error when the draft names a correction that is not among them, or does to one what cannot be done
 */
export function outcomesOf(
  draft: CheckDraft,
  corrections: readonly CheckedCorrection[],
  atMs: number,
): CheckOutcome[] {
  const wanted = [
    ...draft.verdicts.flatMap(({ verdict, note, ...where }) =>
      verdict === null ? [] : [{ ...where, kind: verdict, reason: note }],
    ),
    ...draft.retirements.map((row) => ({ ...row, kind: "retired" as const, clipId: null, frame: null })),
  ];
  const known = new Set(corrections.map((each) => each.id));
  if (wanted.some((row) => !known.has(row.correctionId)))
    throw new Error("A check names a strange correction.");
  return asTheDeliveryRuns(corrections).flatMap((correction) =>
    wanted
      .filter((row) => row.correctionId === correction.id)
      .map((row) => ({ ...row, standing: standingAfter(correction, row, atMs) })),
  );
}

function standingAfter(
  correction: CheckedCorrection,
  row: { kind: CorrectionEventKind; reason: string },
  atMs: number,
): CorrectionStanding {
  const move = moveCorrection(correction.standing, { ...row, atMs });
  if (!move.ok) throw new Error(`A check cannot do this to a correction: ${row.kind}, ${move.refusal}.`);
  return move.standing;
}

/**
 * What a check found, as plain text for a message: a numbered line for each correction, then the coach's own word.
 * @example "1. Hips lead (stride): it holds now."
 */
export function outcomesInWords(
  outcomes: readonly CheckOutcome[],
  corrections: readonly CheckedCorrection[],
  note: string,
): string {
  const lines = outcomes.map((outcome, index) => {
    const correction = corrections.find((each) => each.id === outcome.correctionId);
    const name = correction
      ? `${correction.checkpointName} (${PHASE_WORDS[correction.phase].toLowerCase()})`
      : "A correction";
    const reason = oneLine(outcome.reason);
    return `${index + 1}. ${name}: ${outcomeWord(outcome)}.${reason === "" ? "" : ` ${reason}`}`;
  });
  const word = oneLine(note);
  return [
    ...(lines.length > 0 ? lines : ["Nothing was open any more."]),
    ...(word === "" ? [] : [word]),
  ].join("\n");
}

/** What became of one correction, in plain words. @example "seen once; it holds when it is seen again" */
export function outcomeWord({ kind, standing }: Pick<CheckOutcome, "kind" | "standing">): string {
  if (kind === "retired") return "no longer wanted";
  if (kind === "partly") return "partly there, go on with it";
  if (kind === "not_yet")
    return standing.cameBack ? "it came back, so it is open again" : "not yet, go on with it";
  return standing.state === "held" ? "it holds now" : "yes; it holds when it is seen a second time";
}

const oneLine = (text: string) => text.replace(/\s+/gu, " ").trim();
