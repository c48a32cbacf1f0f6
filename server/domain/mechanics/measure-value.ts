import { durationBetween, type TimeBase } from "@/server/domain/clips/time-base";
import type { ThrowingHand } from "@/server/domain/people/person";
import type { Place } from "./angles";
import type { CameraView } from "./delivery";
import { rightOfPicture } from "./handedness";
import type { ErrorFigure, MeasureError } from "./measure-error";
import { GEOMETRY } from "./measure-geometry";
import { MEASURES, type MeasureKind, type MeasureUnit } from "./measure-kind";
import { pointProblem, type TakenMeasure, viewProblem } from "./measure-refusal";

/** The clip that is measured, and who throws on it. */
export interface MeasuredClip {
  view: CameraView | null;
  throws: ThrowingHand;
  timeBase: TimeBase;
  frameTimesMs: readonly number[];
}

/** A value in the unit of its kind, or the sentence that says why there is none. */
export type MeasureResult = { value: number } | { problem: string };

/**
 * What a measure is worth: degrees, hundredths of its length, or milliseconds (see {@link GEOMETRY} for what is plus).
 * Refused from a view that cannot show it, when a point is missing, lies on a frame it may not or on another, and for a
 * held finish without a true time base.
 */
export function measureValue(measure: TakenMeasure, of: MeasuredClip): MeasureResult {
  const problem = viewProblem(measure.kind, of.view) ?? pointProblem(measure);
  if (problem !== null) return { problem };
  if (measure.kind === "finish_hold") return heldFor(measure, of);
  const right = of.view === null ? null : rightOfPicture(of.throws, of.view);
  const ahead = right === "plate" || right === "glove_side" ? 1 : -1;
  const at = (index: number): Place => measure.points[index] ?? { x: Number.NaN, y: Number.NaN };
  const value = GEOMETRY[measure.kind](at, ahead);
  return Number.isFinite(value) ? { value } : { problem: "Two points lie on one place: place them apart." };
}

function heldFor({ frame, untilFrame }: TakenMeasure, of: MeasuredClip): MeasureResult {
  if (untilFrame === null) return { problem: "Name the last frame of the finish." };
  if (untilFrame < frame) return { problem: "The finish ends before it begins." };
  if (of.timeBase.kind !== "true") return { problem: of.timeBase.why };
  const { ms } = durationBetween(of.timeBase, of.frameTimesMs, frame, untilFrame);
  return ms === null ? { problem: "The finish is held on a frame this clip does not have." } : { value: ms };
}

/** How the side a value lies to is told: first plus, then minus. Kinds without sides have none. */
const SIDES: Partial<Record<MeasureKind, readonly [plus: string, minus: string]>> = {
  trunk_tilt_forward: ["toward the plate", "away from the plate"],
  trunk_tilt_side: ["to the glove side", "to the throwing side"],
  stride_direction: ["to the glove side, open", "to the throwing side, closed"],
  shoulder_tilt: ["throwing shoulder higher", "glove shoulder higher"],
  head_travel: ["to the glove side", "to the throwing side"],
};

/** A number in a unit, rounded as it is written: whole degrees and hundredths, hundredths of a second. */
const WRITTEN: Readonly<
  Record<MeasureUnit, { rounded: (value: number) => string; sign: string; least: number }>
> = {
  deg: { rounded: (value) => String(Math.round(value)), sign: "°", least: 1 },
  pct: { rounded: (value) => String(Math.round(value)), sign: " %", least: 1 },
  ms: { rounded: (value) => (value / 1000).toFixed(2), sign: " s", least: 10 },
};

/**
 * A value as it is written, with its error. An error is never rounded to nothing. The day's error is told where there is
 * enough of it, for it holds the other; else what placing the points again gave; else that nobody knows yet.
 * @example measureInWords("front_knee_flexion", 38.2, error) // "38° ± 3"
 * @example measureInWords("stride_length", 82, null) // "82 % of standing height, error not yet known"
 */
export function measureInWords(
  kind: MeasureKind,
  value: number,
  error: Pick<MeasureError, "sameFrame" | "sameDay"> | null,
): string {
  const { unit, of } = MEASURES[kind];
  const figure = printed(error);
  const number = valueInWords(kind, value);
  const margin = figure === null ? "" : ` ± ${marginInWords(unit, figure)}`;
  const side = sideInWords(kind, value);
  const tail = [
    of === "" ? "" : ` of ${of}`,
    side === "" ? "" : `${of === "" ? " " : ", "}${side}`,
    trailing(error, figure),
  ];
  return `${number}${margin}${tail.join("")}`;
}

/** The bare number with its unit, its side left out. @example valueInWords("trunk_tilt_forward", -4.2) // "4°" */
export function valueInWords(kind: MeasureKind, value: number): string {
  const { rounded, sign } = WRITTEN[MEASURES[kind].unit];
  const shown = rounded(SIDES[kind] ? Math.abs(value) : value);
  return `${shown === "-0" ? "0" : shown.replace("-", "−")}${sign}`;
}

/** The bare number and the side it lies to. @example valueWithSide("trunk_tilt_forward", -4.2) // "4° away from the plate" */
export function valueWithSide(kind: MeasureKind, value: number): string {
  return [valueInWords(kind, value), sideInWords(kind, value)].filter((part) => part !== "").join(" ");
}

/** An error as it follows the sign ±, without a unit but for times. */
export function marginInWords(unit: MeasureUnit, { plusMinus }: Pick<ErrorFigure, "plusMinus">): string {
  const { rounded, least } = WRITTEN[unit];
  return rounded(Math.max(least, plusMinus));
}

function printed(error: Pick<MeasureError, "sameFrame" | "sameDay"> | null): ErrorFigure | null {
  const figures = [error?.sameDay, error?.sameFrame];
  return figures.find((each) => each?.isEnough) ?? null;
}

function trailing(
  error: Pick<MeasureError, "sameFrame" | "sameDay"> | null,
  figure: ErrorFigure | null,
): string {
  if (figure === null) return ", error not yet known";
  return figure === error?.sameDay ? "" : ", by placing the points alone";
}

/** The side a value lies to; empty for a kind without sides and for what is written as 0. */
export function sideInWords(kind: MeasureKind, value: number): string {
  const sides = SIDES[kind];
  const { rounded } = WRITTEN[MEASURES[kind].unit];
  if (!sides || Number(rounded(value)) === 0) return "";
  return value > 0 ? sides[0] : sides[1];
}
