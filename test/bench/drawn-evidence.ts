import { type Random, seededRandom } from "../../seed/seeded-random";
import { type ErrorFigure, errorFigure } from "../../server/domain/mechanics/measure-error";
import type { Observation, SeriesKind } from "../../server/domain/mechanics/observation";
import { detectableChange } from "../../server/domain/statistics/measurement-error";
import { addDays } from "../../server/domain/time/calendar-day";

/** How a checkpoint really goes on after its correction: as before, better or worse at once, better over two weeks. */
export type Truth = "nothing" | "at_once" | "in_weeks" | "worse";

/** One checkpoint of a drawn season. */
export interface DrawnCheckpoint {
  truth: Truth;
  kind: SeriesKind;
  observations: Observation[];
  /** The last day before the correction: the first that looked bad. */
  givenOn: string;
  error: ErrorFigure | null;
  /** How much is really changed in the end, in true detectable changes; 0 where nothing is. */
  trueChange: number;
}

/** Standard deviations: of placing points (or judging), from delivery to delivery, from day to day. */
interface Spreads {
  look: number;
  delivery: number;
  day: number;
}

const SPREADS = {
  front_knee_flexion: { look: 2, delivery: 3, day: 2 },
  judgement: { look: 0.35, delivery: 0.25, day: 0.2 },
} as const satisfies Partial<Record<SeriesKind, Spreads>>;

type DrawnKind = keyof typeof SPREADS;

const CHECKPOINTS = 12;

/** A season of twelve checkpoints; the same for one seed. Half of them never change. */
export function drawnSeason(seed: string): DrawnCheckpoint[] {
  const random = seededRandom(seed);
  const errors = {
    front_knee_flexion: academyError(random.fork("knee"), "front_knee_flexion"),
    judgement: academyError(random.fork("judgement"), "judgement"),
  };
  return Array.from({ length: CHECKPOINTS }, (_, at) => {
    const own = random.fork(`checkpoint ${at}`);
    const kind: DrawnKind = own.chance(0.3) ? "judgement" : "front_knee_flexion";
    return { ...drawnCheckpoint(own, kind), error: errors[kind] };
  });
}

function drawnCheckpoint(random: Random, kind: DrawnKind): Omit<DrawnCheckpoint, "error"> {
  const truth = random.pick<Truth>(["nothing", "nothing", "nothing", "at_once", "in_weeks", "worse"]);
  const detectable = detectableChange(withinDay(kind));
  const trueChange = truth === "nothing" ? 0 : random.between(2, kind === "judgement" ? 2.4 : 4);
  const usual = kind === "judgement" ? { nothing: 1.5, at_once: 0, in_weeks: 0, worse: 3 }[truth] : 40;
  const before = drawnBefore(random.fork("before"), kind, usual);
  const givenOn = before.at(-1)?.day ?? FIRST_DAY;
  const after = Array.from({ length: random.int(3, 9) }, (_, week) =>
    drawnDay(random.fork(`after ${week}`), kind, {
      day: addDays(givenOn, 7 * (week + 1)),
      level: usual + shareOf(truth, week + 1) * trueChange * detectable,
    }),
  ).flat();
  return { truth, kind, observations: [...before, ...after], givenOn, trueChange };
}

function shareOf(truth: Truth, weeks: number): number {
  if (truth === "worse") return -1;
  return truth === "in_weeks" ? Math.min(1, weeks / 2) : 1;
}

const FIRST_DAY = "2026-01-05";

/* Three weeks at least and twelve at most, until a first look is a standard error below what is usual. */
function drawnBefore(random: Random, kind: DrawnKind, usual: number): Observation[] {
  const seen: Observation[] = [];
  for (let week = 0; week < 12; week += 1) {
    const ofDay = drawnDay(random.fork(`${week}`), kind, { day: addDays(FIRST_DAY, 7 * week), level: usual });
    seen.push(...ofDay);
    const looksBad = (ofDay[0]?.value ?? usual) < usual - withinDay(kind);
    if (week >= 2 && looksBad) break;
  }
  return seen;
}

/* One to three deliveries, a fifth of them looked at twice. */
function drawnDay(random: Random, kind: DrawnKind, { day, level }: { day: string; level: number }) {
  const ofDay = level + SPREADS[kind].day * bell(random);
  return Array.from({ length: random.int(1, 3) }, (_, delivery) => {
    const thrown = ofDay + SPREADS[kind].delivery * bell(random);
    const clipId = `${day} ${delivery}`;
    return Array.from(
      { length: random.chance(0.2) ? 2 : 1 },
      (__, look): Observation => ({
        ...{ id: `${clipId} ${look}`, checkpointId: "drawn", kind, day, clipId, frame: 40 },
        value: looked(random, kind, thrown),
        ...{ view: "open_side", coachId: "coach", pitchType: null },
        repeatOfId: look === 0 ? null : `${clipId} 0`,
      }),
    );
  }).flat();
}

/** What the academy knows of its error: twelve days of three deliveries, of athletes unlike one another. */
function academyError(random: Random, kind: DrawnKind): ErrorFigure | null {
  const groups = Array.from({ length: 12 }, () => {
    const level = kind === "judgement" ? random.between(0.5, 2.5) : random.between(20, 60);
    return Array.from({ length: 3 }, () =>
      looked(random, kind, level + SPREADS[kind].delivery * bell(random)),
    );
  });
  return errorFigure(groups);
}

function looked(random: Random, kind: DrawnKind, thrown: number): number {
  const value = thrown + SPREADS[kind].look * bell(random);
  return kind === "judgement" ? Math.max(0, Math.min(3, Math.round(value))) : value;
}

const withinDay = (kind: DrawnKind) => Math.hypot(SPREADS[kind].look, SPREADS[kind].delivery);

/** A normal value (Box and Muller 1958, Ann Math Stat 29:610-611). */
function bell(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random.next())) * Math.cos(2 * Math.PI * random.next());
}
