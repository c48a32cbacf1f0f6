import { CAMERA_VIEW_WORDS, type CameraView } from "@/server/domain/mechanics/delivery";
import { ENOUGH_FREEDOM, type ErrorFigure } from "@/server/domain/mechanics/measure-error";
import { MEASURES, type MeasureKind, type MeasureUnit } from "@/server/domain/mechanics/measure-kind";
import { marginInWords } from "@/server/domain/mechanics/measure-value";

const UNIT_WORDS: Readonly<Record<MeasureUnit, string>> = { deg: "°", pct: " %", ms: " s" };

/** Where a measure was taken. Frames are counted from 1 where they are read. @example "open side, frame 109" */
export function onFrame({ view, frame }: { view: CameraView; frame: number }): string {
  return `${CAMERA_VIEW_WORDS[view].toLowerCase()}, frame ${frame + 1}`;
}

/**
 * One source of an error, and how many repeats it comes of.
 * @example figureInWords("front_knee_flexion", figure) // "± 3° from 18 repeats"
 * @example figureInWords("front_knee_flexion", null) // "not yet known: 0 of 15 repeats"
 */
export function figureInWords(kind: MeasureKind, figure: ErrorFigure | null): string {
  if (!figure?.isEnough) {
    return `not yet known: ${figure?.degreesOfFreedom ?? 0} of ${ENOUGH_FREEDOM} repeats`;
  }
  const { unit } = MEASURES[kind];
  return `± ${marginInWords(unit, figure)}${UNIT_WORDS[unit]} from ${figure.degreesOfFreedom} repeats`;
}

/** Of whom a second measure is asked. @example askedOfInWords({ isForMe: true, askedOf: "Ines Roe" }) // "you" */
export function askedOfInWords({ isForMe, askedOf }: { isForMe: boolean; askedOf: string | null }): string {
  return isForMe ? "you" : (askedOf ?? "whoever comes first");
}
