import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { type AmongMany, type ManyCheckpoints, manyCheckpoints } from "./many-checkpoints";
import { type Observation, type Series, seriesOf } from "./observation";
import type { ErrorOfSeries, SeriesError } from "./series-error";
import { type ShiftInSeries, shiftInSeries } from "./shift-in-series";
import { type GivenCorrection, sinceCorrection } from "./since-correction";
import { type Trend, trendInWords } from "./trend-in-words";
import { type StatedDirection, type WantedDirection, wantedDirection } from "./wanted-direction";

/** A correction as its evidence needs it. */
export interface AskedFor extends GivenCorrection {
  id: string;
  checkpointId: string;
  /** Which way it asks the measure to go; null where it does not say. */
  wanted: StatedDirection | null;
}

/** What is on record of one athlete. */
export interface AthleteRecord {
  observations: readonly Observation[];
  /** In the order given. */
  corrections: readonly AskedFor[];
  /** Which way the measure of a checkpoint is better; null where nobody said. */
  wantedOf: (checkpointId: string) => StatedDirection | null;
  errorOf: ErrorOfSeries;
  /** Of which corrections a change is told, as of one season; by default of all. */
  isAskedFor?: (correctionId: string) => boolean;
}

/** One series and what may be said of it. */
export interface SeriesEvidence {
  series: Series;
  error: SeriesError | null;
  /** By the latest correction that says so, else by the checkpoint. */
  wanted: WantedDirection;
  trend: Trend;
  /** Its limits rest on the days up to the latest correction. */
  shift: ShiftInSeries;
  /** Since each correction at its checkpoint, weighed among all of the athlete; in the order given. */
  since: { correctionId: string; among: AmongMany }[];
}

/** All that may be said of one athlete. */
export interface AthleteEvidence {
  series: SeriesEvidence[];
  many: ManyCheckpoints;
}

/**
 * What the record of an athlete carries: each series with its error, trend and shift, and what changed since each
 * correction at its checkpoint, weighed together over all of them ({@link manyCheckpoints}). A correction given at a
 * checkpoint before ends the days after the one before it, and its own days before begin there: what belongs to two
 * corrections tells of neither.
 * @returns of an empty record no series
 */
export function athleteEvidence(record: AthleteRecord): AthleteEvidence {
  const all = seriesOf(record.observations);
  const { isAskedFor = () => true } = record;
  const looked = all.flatMap((series, at) =>
    correctionsAt(record, series)
      .map((correction, of, ofSeries) => ({ correction, before: ofSeries[of - 1], next: ofSeries[of + 1] }))
      .filter(({ correction }) => isAskedFor(correction.id))
      .map(({ correction, before, next }) => ({
        id: `${at} ${correction.id}`,
        since: sinceCorrection(
          { kind: series.kind, days: daysOf(series, before?.givenOn, next?.givenOn) },
          correction,
          wantedDirection(series.kind, correction.wanted, record.wantedOf(series.checkpointId)),
          record.errorOf(series)?.figure ?? null,
        ),
      })),
  );
  const many = manyCheckpoints(looked);
  const amongOf = new Map(many.results.map((each) => [each.id, each]));
  const series = all.map((each, at) => seriesEvidence(record, each, (id) => amongOf.get(`${at} ${id}`)));
  return { series, many };
}

function seriesEvidence(
  record: AthleteRecord,
  series: Series,
  amongOf: (correctionId: string) => AmongMany | undefined,
): SeriesEvidence {
  const corrections = correctionsAt(record, series);
  const saying = corrections.findLast((each) => each.wanted !== null)?.wanted ?? null;
  const wanted = wantedDirection(series.kind, saying, record.wantedOf(series.checkpointId));
  return {
    ...{ series, wanted, error: record.errorOf(series) },
    /* Worked out when asked for: a season's line tells the changes of twenty series and the trend of none. */
    get trend() {
      return trendInWords(series, wanted);
    },
    get shift() {
      return shiftInSeries(series, corrections.at(-1)?.givenOn ?? null);
    },
    since: corrections.flatMap(({ id }) => {
      const among = amongOf(id);
      return among === undefined ? [] : [{ correctionId: id, among }];
    }),
  };
}

function correctionsAt({ corrections }: AthleteRecord, { checkpointId }: Series): AskedFor[] {
  return corrections.filter((each) => each.checkpointId === checkpointId);
}

function daysOf({ days }: Series, after: CalendarDay | undefined, until: CalendarDay | undefined) {
  return days.filter(
    ({ day }) => (after === undefined || day > after) && (until === undefined || day <= until),
  );
}
