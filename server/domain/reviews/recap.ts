import { PHASE_WORDS, type Phase, phaseOrder } from "@/server/domain/mechanics/delivery";
import type { OpenVerdict } from "./correction-state";

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

/** A correction from before that was seen again, with the coach's word of today; `id` is the correction's own. */
export interface RecapShownAgain extends RecapCorrection {
  verdict: OpenVerdict;
  note: string;
}

/** The end of a review, generated from what was marked: its count and order can never differ from it. */
export interface Recap {
  keeps: readonly RecapKeep[];
  /** Open from before and seen again; not counted, because they are not new. */
  shownAgain: readonly RecapShownAgain[];
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
  shownAgain?: readonly RecapShownAgain[];
}): Recap {
  const corrections = asTheDeliveryRuns(marked.corrections).map((correction, index) => ({
    ...correction,
    number: index + 1,
  }));
  return {
    keeps: asTheDeliveryRuns(marked.keeps),
    shownAgain: asTheDeliveryRuns(marked.shownAgain ?? []),
    corrections,
    count: corrections.length,
  };
}

/**
 * The recap as plain text for a message: one line a keep, one a correction that is still open, one numbered line a new
 * correction. Line breaks inside a text become spaces, so a line that starts with a number is always a new correction.
 * @example "Work on 1 correction:\n1. Hips lead (stride): Hip first. Drill: hip bumps."
 */
export function recapInWords(recap: Recap): string {
  const keeps = recap.keeps.map((keep) => `- ${oneLine(keep.text)} (${phaseWord(keep.phase)})`);
  const corrections = recap.corrections.map(
    (correction) => `${correction.number}. ${correctionLine(correction)}`,
  );
  const again = recap.shownAgain.map((each) => `- ${shownAgainLine(each)}`);
  return [
    ...(keeps.length > 0 ? ["Keep:", ...keeps] : []),
    ...(again.length > 0 ? ["Go on with what is still open:", ...again] : []),
    ...(recap.count > 0
      ? [`Work on ${countInWords(recap.count)}:`, ...corrections]
      : nothingNew(again.length)),
  ].join("\n");
}

/** "no corrections", "1 correction", "3 corrections". */
export function countInWords(count: number): string {
  if (count === 0) return "no corrections";
  return count === 1 ? "1 correction" : `${count} corrections`;
}

function nothingNew(stillOpen: number): string[] {
  return [stillOpen > 0 ? "No new corrections this time." : "No corrections this time."];
}

function shownAgainLine({ verdict, note, ...correction }: RecapShownAgain): string {
  const word = oneLine(note);
  const showing = verdict === "partly" ? " Partly there." : "";
  return `${correctionLine(correction)}${showing}${word === "" ? "" : ` ${sentence(word)}`}`;
}

function correctionLine(correction: RecapCorrection): string {
  const drill = oneLine(correction.drill);
  const start = `${oneLine(correction.checkpointName)} (${phaseWord(correction.phase)}): ${sentence(oneLine(correction.cue))}`;
  return drill === "" ? start : `${start} Drill: ${sentence(drill)}`;
}

const phaseWord = (phase: Phase) => PHASE_WORDS[phase].toLowerCase();
const oneLine = (text: string) => text.replace(/\s+/gu, " ").trim();
const sentence = (text: string) => (/[.!?]$/u.test(text) ? text : `${text}.`);
