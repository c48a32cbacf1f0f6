import { z } from "zod";
import { SPEED_UNITS } from "@/server/domain/calendar/radar-speed";
import { SECOND_ADULT_KINDS } from "@/server/domain/calendar/second-adult";
import {
  MAX_SESSION_MIN,
  MIN_SESSION_MIN,
  SESSION_KIND,
  SESSION_KINDS,
  throwsOnMound,
} from "@/server/domain/calendar/session-kind";
import { SESSION_STATES } from "@/server/domain/calendar/session-state";
import { calendarDay } from "@/server/domain/people/athlete-record";

/** An id as the procedures take it. */
export const rowId = z.string().min(1).max(60);

/** The start of a session: a whole minute, in epoch milliseconds, until the year 2200. */
export const startInstant = z.int().min(0).max(7_258_118_400_000).multipleOf(60_000);

export const durationMin = z.int().min(MIN_SESSION_MIN).max(MAX_SESSION_MIN);
export const pitchCount = z.int().min(0).max(400);
export const reasonText = z.string().trim().min(1, "a reason").max(500);

/** Who watches a one-to-one session with a minor. */
export const secondAdult = z.strictObject({ kind: z.enum(SECOND_ADULT_KINDS), personId: rowId });

const plannedAthlete = z.strictObject({ athleteId: rowId, plannedPitches: pitchCount });

/** Those who come and what is planned for each arm; each once. */
export const plannedAthletes = z
  .array(plannedAthlete)
  .min(1)
  .max(8)
  .refine((all) => new Set(all.map((one) => one.athleteId)).size === all.length, "each athlete once");

/** What a session is: kind, time, place, people. Dry work plans no pitches; each kind holds so many athletes. */
const placed = z.strictObject({
  kind: z.enum(SESSION_KINDS),
  startsAtMs: startInstant,
  durationMin,
  siteId: rowId,
  laneId: rowId,
  coachPersonId: rowId,
  athletes: plannedAthletes,
  secondAdult: secondAdult.nullable(),
});

type Placed = z.output<typeof placed>;

function kindProblem({ kind, athletes }: Pick<Placed, "kind" | "athletes">): string | null {
  const { mostAthletes } = SESSION_KIND[kind];
  if (athletes.length > mostAthletes) return `at most ${mostAthletes} athletes on one session of this kind`;
  const plansThrows = athletes.some((one) => one.plannedPitches > 0);
  return plansThrows && !throwsOnMound(kind) ? "no pitches planned in a session without mound throws" : null;
}

function keepsKind(input: Placed, context: z.core.$RefinementCtx<Placed>) {
  const message = kindProblem(input);
  if (message) context.addIssue({ code: "custom", path: ["athletes"], message, input });
}

/** A session to be booked. */
export const bookInput = placed
  .extend({
    roundId: rowId.nullable(),
    correctionIds: z
      .array(rowId)
      .max(20)
      .refine((all) => new Set(all).size === all.length, "each correction once"),
  })
  .superRefine(keepsKind);

/** A session to be moved, or planned anew where it is. */
export const moveInput = placed.extend({ sessionId: rowId, version: z.int().min(1) }).superRefine(keepsKind);

/** What is looked for. Days by the first athlete's calendar, both included. */
export const findInput = z
  .strictObject({
    athleteIds: z.array(rowId).min(1).max(8),
    kind: z.enum(SESSION_KINDS),
    durationMin,
    plannedPitches: pitchCount,
    fromDay: calendarDay,
    toDay: calendarDay,
    coachPersonId: rowId.nullable(),
    siteId: rowId.nullable(),
    wish: z
      .strictObject({
        weekdays: z.array(z.int().min(1).max(7)).max(7),
        fromMin: z.int().min(0).max(1440),
        toMin: z.int().min(0).max(1440),
      })
      .nullable(),
    roundId: rowId.nullable(),
    /** The session that is to be moved: what it takes counts as free. */
    moveSessionId: rowId.nullable(),
  })
  .refine((input) => input.fromDay <= input.toDay, { path: ["toDay"], message: "not before the first day" });

export type FindInput = z.output<typeof findInput>;
export type BookInput = z.output<typeof bookInput>;
export type MoveInput = z.output<typeof moveInput>;

/** A time that fits, as a sentence and as what to book. */
const foundTime = z.strictObject({
  startsAtMs: z.number(),
  endsAtMs: z.number(),
  siteId: z.string(),
  laneId: z.string(),
  coachPersonId: z.string(),
  coachName: z.string(),
  sentence: z.string(),
  /** The most the book leaves the tightest arm; null where there is no number to name. */
  atMost: z.number().nullable(),
  holdsPlanned: z.boolean(),
  isWished: z.boolean(),
});

/** What a search gives: times best first, the days an arm stops, and what was not reported. */
export const findOutput = z.strictObject({
  times: z.array(foundTime),
  refused: z.array(
    z.strictObject({
      fromDay: z.string(),
      toDay: z.string(),
      sentence: z.string(),
      firstFreeDay: z.string().nullable(),
      dryWorkFits: z.boolean(),
      isPain: z.boolean(),
    }),
  ),
  unreported: z.array(z.string()),
});

/** What a booked session asks of an arm and what the book leaves it now. */
export const armNow = z.strictObject({ words: z.string(), hasRoom: z.boolean(), why: z.array(z.string()) });

/** Where a session stands, for whoever may see it. */
export const sessionHead = z.strictObject({
  id: z.string(),
  kind: z.enum(SESSION_KINDS),
  state: z.enum(SESSION_STATES),
  startsAtMs: z.number(),
  endsAtMs: z.number(),
  zone: z.string(),
  siteId: z.string(),
  siteName: z.string(),
  laneId: z.string(),
  laneName: z.string(),
  coachPersonId: z.string(),
  coachName: z.string(),
  secondAdult: secondAdult.extend({ name: z.string() }).nullable(),
  cancelReason: z.string().nullable(),
  version: z.number(),
});

/** A correction as the plan of a session names it. */
export const plannedCorrection = z.strictObject({
  correctionId: z.string(),
  checkpointName: z.string(),
  cue: z.string(),
  drill: z.string(),
  state: z.enum(["given", "showing", "held", "retired"]),
  isPlanned: z.boolean(),
});

/** What was counted beside the pitches; null where nobody did. */
export const countedPitches = {
  strikes: z.int().nullable(),
  topSpeed: z.number().nullable(),
  speedUnit: z.enum(SPEED_UNITS).nullable(),
};

/** One athlete's line on the log. */
export const loggedLine = z.strictObject({
  attendance: z.enum(["came", "no_show"]),
  minutes: z.number(),
  pitches: z.number(),
  effort: z.number().nullable(),
  ...countedPitches,
  note: z.string(),
  loggedAtMs: z.number(),
  work: z.array(
    z.strictObject({
      correctionId: z.string(),
      checkpointName: z.string(),
      outcome: z.enum(["worked_on", "confirmed"]),
    }),
  ),
});
