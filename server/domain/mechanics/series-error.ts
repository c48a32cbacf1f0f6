import type { CameraView } from "./delivery";
import { grouped } from "./grouped";
import { type ErrorFigure, errorFigure } from "./measure-error";
import type { Series, SeriesKind } from "./observation";

/** Values of what should be one and the same: deliveries of one athlete on one day, at one checkpoint from one view. */
export interface DayRepeats {
  checkpointId: string;
  kind: SeriesKind;
  /** Null for what was seen in person. */
  view: CameraView | null;
  values: readonly number[];
}

/** The error of a series, and on whose repeats it rests. */
export interface SeriesError {
  figure: ErrorFigure;
  /** Its own checkpoint's, or those of every checkpoint of its kind and view where its own are too few. */
  of: "checkpoint" | "kind";
}

/** What tells the error of a series. */
export type ErrorOfSeries = (series: Pick<Series, "checkpointId" | "kind" | "view">) => SeriesError | null;

/**
 * The error of each series from the academy's own days. A checkpoint's own repeats are taken once they are enough to be
 * printed; until then those of all checkpoints of the same kind and view together, which is a rougher figure.
 * @returns null for a series of a kind and view that no day holds several deliveries of
 */
export function errorsOfSeries(repeats: readonly DayRepeats[]): ErrorOfSeries {
  const own = figuresBy(repeats, (each) => `${each.kind} ${each.view} ${each.checkpointId}`);
  const pooled = figuresBy(repeats, (each) => `${each.kind} ${each.view}`);
  return ({ kind, view, checkpointId }) => {
    const ofCheckpoint = own.get(`${kind} ${view} ${checkpointId}`);
    if (ofCheckpoint?.isEnough) return { figure: ofCheckpoint, of: "checkpoint" };
    const ofKind = pooled.get(`${kind} ${view}`);
    return ofKind === undefined ? null : { figure: ofKind, of: "kind" };
  };
}

function figuresBy(repeats: readonly DayRepeats[], keyOf: (each: DayRepeats) => string) {
  const groups = grouped(repeats, keyOf);
  return new Map(
    groups.flatMap((group) => {
      const [first] = group;
      const figure = errorFigure(group.map(({ values }) => values));
      return first === undefined || figure === null ? [] : [[keyOf(first), figure] as const];
    }),
  );
}
