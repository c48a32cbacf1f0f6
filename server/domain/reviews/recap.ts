import { PHASE_WORDS, type Phase, phaseOrder } from "@/server/domain/mechanics/delivery";

/** A correction as the recap tells it. `frame` is the one it was seen on, counted from 0. */
export interface RecapCorrection {
  id: string;
  phase: Phase;
  frame: number;
  checkpointName: string;
  cue: string;
  drill: string;
}

/** A keep as the recap tells it; `frame` null when it was not seen on one frame. */
export interface RecapKeep {
  id: string;
  phase: Phase;
  frame: number | null;
  text: string;
}

/** The end of a review, generated from what was marked: its count and order can never differ from it. */
export interface Recap {
  keeps: readonly RecapKeep[];
  /** Numbered from 1 without a gap. */
  corrections: readonly (RecapCorrection & { number: number })[];
  count: number;
}

/**
 * Sorts as the delivery runs: by phase, then by frame; rows without a frame come last in their phase, and equal rows
 * keep the order in which they were written.
 */
export function asTheDeliveryRuns<Row extends { phase: Phase; frame: number | null }>(
  rows: readonly Row[],
): Row[] {
  const place = (row: Row) => row.frame ?? Number.MAX_SAFE_INTEGER;
  return [...rows].sort((a, b) => phaseOrder(a.phase) - phaseOrder(b.phase) || place(a) - place(b));
}

/** The recap of a review; empty lists give an empty recap with count 0. */
export function recapOf(marked: {
  keeps: readonly RecapKeep[];
  corrections: readonly RecapCorrection[];
}): Recap {
  const corrections = asTheDeliveryRuns(marked.corrections).map((correction, index) => ({
    ...correction,
    number: index + 1,
  }));
  return { keeps: asTheDeliveryRuns(marked.keeps), corrections, count: corrections.length };
}

/**
 * The recap as plain text for a message: one line a keep, one numbered line a correction. Line breaks inside a text
 * become spaces, so a line that starts with a number is always a correction.
 * @example "Work on 1 correction:\n1. Hips lead (stride): Hip first. Drill: hip bumps."
 */
export function recapInWords(recap: Recap): string {
  const keeps = recap.keeps.map((keep) => `- ${oneLine(keep.text)} (${phaseWord(keep.phase)})`);
  const corrections = recap.corrections.map(
    (correction) => `${correction.number}. ${correctionLine(correction)}`,
  );
  return [
    ...(keeps.length > 0 ? ["Keep:", ...keeps] : []),
    ...(recap.count > 0
      ? [`Work on ${countInWords(recap.count)}:`, ...corrections]
      : ["No corrections this time."]),
  ].join("\n");
}

/** "no corrections", "1 correction", "3 corrections". */
export function countInWords(count: number): string {
  if (count === 0) return "no corrections";
  return count === 1 ? "1 correction" : `${count} corrections`;
}

function correctionLine(correction: RecapCorrection): string {
  const drill = oneLine(correction.drill);
  const start = `${oneLine(correction.checkpointName)} (${phaseWord(correction.phase)}): ${sentence(oneLine(correction.cue))}`;
  return drill === "" ? start : `${start} Drill: ${sentence(drill)}`;
}

const phaseWord = (phase: Phase) => PHASE_WORDS[phase].toLowerCase();
const oneLine = (text: string) => text.replace(/\s+/gu, " ").trim();
const sentence = (text: string) => (/[.!?]$/u.test(text) ? text : `${text}.`);
