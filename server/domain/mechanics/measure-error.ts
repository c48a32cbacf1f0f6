import { REACH_95, withinSubjectError } from "@/server/domain/statistics/measurement-error";
import type { CameraView } from "./delivery";
import type { MeasureKind } from "./measure-kind";

/**
 * How many degrees of freedom a figure needs before it is printed: each group of repeats brings one fewer than its
 * values. At 15 the figure itself is sure to about a third (1.96 / sqrt(2 × 15)). Common practice, no source.
 */
export const ENOUGH_FREEDOM = 15;

/** What repeats say of a measure, in its own unit. */
export interface ErrorFigure {
  /** Within-subject standard deviation: root of the mean variance within the groups, weighted by their freedom. */
  withinSd: number;
  /** 95 of 100 measures lie within this of the true value: 1.96 times the within-subject standard deviation. */
  plusMinus: number;
  degreesOfFreedom: number;
  /** Fewer than {@link ENOUGH_FREEDOM} degrees of freedom are not printed. */
  isEnough: boolean;
}

/**
 * The error of a kind of measure from one view, by its two sources. `sameFrame`: one frame measured again, blind, which
 * is the placing of points alone. `sameDay`: three or more deliveries of one athlete on one day, each measured once, at
 * the same moment; it holds the placing too, and how much a delivery differs from the next. Null without any repeat.
 */
export interface MeasureError {
  kind: MeasureKind;
  view: CameraView;
  sameFrame: ErrorFigure | null;
  sameDay: ErrorFigure | null;
}

/** Repeats as they were read: values of what should be one and the same, by where they come from. */
export interface Repeats {
  kind: MeasureKind;
  view: CameraView;
  source: "sameFrame" | "sameDay";
  values: readonly number[];
}

/* Smaller than any measure; squares of such sizes leave the range of a double. */
const NOTHING = 1e-100;

/**
 * The figure from groups of repeats, or null when none holds two values: the within-subject error of the statistics
 * (Bland and Altman 1996, BMJ 313:744); groups of unequal size are weighted as in a one-way analysis of variance.
 * @example errorFigure([[10, 12], [20, 20]]).withinSd // 1, from variances 2 and 0
 */
export function errorFigure(groups: readonly (readonly number[])[]): ErrorFigure | null {
  const error = withinSubjectError(
    groups.map((group) => group.map((value) => (Math.abs(value) < NOTHING ? 0 : value))),
  );
  if (error.kind === "too_few") return null;
  const { standardError: withinSd, freedom: degreesOfFreedom } = error;
  const isEnough = degreesOfFreedom >= ENOUGH_FREEDOM;
  return { withinSd, plusMinus: REACH_95 * withinSd, degreesOfFreedom, isEnough };
}

/** The fewest deliveries of one day that tell how they differ. */
export const FEWEST_DELIVERIES = 3;

/** The errors of every kind and view of which there are repeats, in no order. Days of fewer deliveries do not count. */
export function measureErrors(repeats: readonly Repeats[]): MeasureError[] {
  const counted = repeats.filter(
    ({ source, values }) => values.length >= (source === "sameDay" ? FEWEST_DELIVERIES : 2),
  );
  const kinds = new Map(counted.map((row) => [`${row.kind} ${row.view}`, row]));
  return [...kinds.values()].map(({ kind, view }) => {
    const figureOf = (source: Repeats["source"]) =>
      errorFigure(
        counted
          .filter((row) => row.kind === kind && row.view === view && row.source === source)
          .map(({ values }) => values),
      );
    return { kind, view, sameFrame: figureOf("sameFrame"), sameDay: figureOf("sameDay") };
  });
}

/** The error of one kind from one view, or null when nothing was ever measured twice. */
export function errorOf(
  errors: readonly MeasureError[],
  kind: MeasureKind,
  view: CameraView | null,
): MeasureError | null {
  return errors.find((each) => each.kind === kind && each.view === view) ?? null;
}
