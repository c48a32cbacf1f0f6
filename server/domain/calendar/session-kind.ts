/** What a coach and an athlete meet for. The one list for the schema, for zod and for the screen. */
export const SESSION_KINDS = ["lesson", "bullpen", "group", "assessment", "dry_work"] as const;
export type SessionKind = (typeof SESSION_KINDS)[number];

/** What a lane is: a mound with a plate, or flat ground. */
export const LANE_KINDS = ["mound", "flat"] as const;
export type LaneKind = (typeof LANE_KINDS)[number];

/** The longest session there may be, in real minutes. The claim search in the database is bounded by it. */
export const MAX_SESSION_MIN = 240;

/** The shortest session there may be, in real minutes (common practice, no source). */
export const MIN_SESSION_MIN = 15;

/** What is known of a kind of session before anything is said about a single one. */
export interface SessionKindFacts {
  label: string;
  /** Whether pitches are thrown off a mound, so that the arm has a say. */
  throwsOnMound: boolean;
  /** A first suggestion, in real minutes. */
  durationMin: number;
  /** A first suggestion for each athlete; 0 where nothing is thrown off a mound. */
  plannedPitches: number;
  /** Lanes it fits, the one to be taken first in front. */
  laneKinds: readonly LaneKind[];
  /** The most athletes on one session of this kind. */
  mostAthletes: number;
}

/** The facts of each kind. Minutes, pitches and head counts are common practice, no source; each session sets its own. */
export const SESSION_KIND: Readonly<Record<SessionKind, SessionKindFacts>> = {
  lesson: {
    label: "Lesson",
    throwsOnMound: true,
    durationMin: 60,
    plannedPitches: 35,
    laneKinds: ["mound"],
    mostAthletes: 2,
  },
  bullpen: {
    label: "Bullpen",
    throwsOnMound: true,
    durationMin: 30,
    plannedPitches: 30,
    laneKinds: ["mound"],
    mostAthletes: 2,
  },
  group: {
    label: "Group",
    throwsOnMound: true,
    durationMin: 90,
    plannedPitches: 20,
    laneKinds: ["mound"],
    mostAthletes: 8,
  },
  assessment: {
    label: "Assessment",
    throwsOnMound: true,
    durationMin: 60,
    plannedPitches: 20,
    laneKinds: ["mound"],
    mostAthletes: 1,
  },
  dry_work: {
    label: "Session without mound throws",
    throwsOnMound: false,
    durationMin: 45,
    plannedPitches: 0,
    laneKinds: ["flat", "mound"],
    mostAthletes: 8,
  },
};

/**
 * Whether the kind throws off a mound, and so needs an arm that is rested. Dry work (towel drill, dry mechanics, video
 * in person) does not: it fits a rest day.
 * @example throwsOnMound("dry_work") // false
 */
export function throwsOnMound(kind: SessionKind): boolean {
  return SESSION_KIND[kind].throwsOnMound;
}

/** Whether a session of the kind can be held on such a lane. */
export function fitsLane(kind: SessionKind, laneKind: LaneKind): boolean {
  return SESSION_KIND[kind].laneKinds.includes(laneKind);
}

/**
 * When a session of that length ends. Minutes are real ones: across a clock change the wall clock shows another span.
 * @throws RangeError when the length is not a whole number from {@link MIN_SESSION_MIN} to {@link MAX_SESSION_MIN}
 */
export function sessionEndMs(startsAtMs: number, durationMin: number): number {
  if (!Number.isInteger(durationMin) || durationMin < MIN_SESSION_MIN || durationMin > MAX_SESSION_MIN) {
    throw new RangeError(
      `A session lasts ${MIN_SESSION_MIN} to ${MAX_SESSION_MIN} whole minutes: ${durationMin}`,
    );
  }
  return startsAtMs + durationMin * 60_000;
}
