import { z } from "zod";
import { findSettings } from "@/server/data/academy-settings";
import { armOf } from "@/server/data/arms";
import { consentIsLive } from "@/server/data/consents";
import type { CorrectionRecord } from "@/server/data/corrections";
import { judgementsOf, roundsOf, sessionsOf } from "@/server/data/season";
import { plannedOutings, throwLog } from "@/server/data/throwing-log";
import { SESSION_KINDS } from "@/server/domain/calendar/session-kind";
import { ATTENDANCES, SESSION_STATES } from "@/server/domain/calendar/session-state";
import { CAMERA_VIEWS, DELIVERY_PHASES } from "@/server/domain/mechanics/delivery";
import { fullName } from "@/server/domain/people/person";
import { correctionSpans } from "@/server/domain/reviews/correction-spans";
import { CORRECTION_STATES } from "@/server/domain/reviews/correction-state";
import { ROUND_STATES } from "@/server/domain/reviews/round-state";
import { currentEntries, THROW_KINDS } from "@/server/domain/throwing/throw-entry";
import { isOutingKind, throwsByWeek } from "@/server/domain/throwing/throws-by-week";
import { addMonths, dayOf } from "@/server/domain/time/calendar-day";
import { answerFor, armAnswer } from "./arm-answer";
import { athleteHead, headOf } from "./athlete-head";
import type { Scope } from "./context";
import { loadEvidence } from "./evidence/load-evidence";
import { painAnswer, painFor } from "./pain-answer";
import { changesSince, checkpointChanges } from "./season-changes-view";
import { countedPitches } from "./sessions/session-shapes";
import { outingAnswer, weekOfThrows } from "./throwing-view";

const day = z.string();

/** Nothing is on record before it. */
const FIRST_DAY = "1900-01-01";

/**
 * A season as everybody who may see the athlete sees it: everything that was recorded, judgements and marks of the last
 * twelve months, and what may be said of each checkpoint since it was corrected.
 */
export const seasonView = z.strictObject({
  athlete: athleteHead,
  today: day,
  sinceDay: day,
  maxOpenCorrections: z.int(),
  hasConsent: z.boolean(),
  arm: armAnswer,
  pain: painAnswer,
  rounds: z.array(
    z.strictObject({
      id: z.string(),
      state: z.enum(ROUND_STATES),
      receivedOn: day,
      /** The day it was settled, withdrawn or lapsed; null while it goes on. */
      endedOn: day.nullable(),
    }),
  ),
  corrections: z.array(
    z.strictObject({
      id: z.string(),
      roundId: z.string(),
      clipId: z.string().nullable(),
      frame: z.int().nullable(),
      checkpointId: z.string(),
      checkpointName: z.string(),
      phase: z.enum(DELIVERY_PHASES),
      cue: z.string(),
      state: z.enum(CORRECTION_STATES),
      cameBack: z.boolean(),
      givenOn: day,
      spans: z.array(
        z.strictObject({ state: z.enum(CORRECTION_STATES), fromDay: day, toDay: day.nullable() }),
      ),
    }),
  ),
  judged: z.array(
    z.strictObject({
      checkpointId: z.string(),
      name: z.string(),
      phase: z.enum(DELIVERY_PHASES),
      judgements: z.array(
        z.strictObject({
          id: z.string(),
          judgedOn: day,
          view: z.enum(CAMERA_VIEWS).nullable(),
          score: z.int().min(0).max(3),
          coachName: z.string(),
        }),
      ),
    }),
  ),
  sessions: z.array(
    z.strictObject({
      id: z.string(),
      kind: z.enum(SESSION_KINDS),
      state: z.enum(SESSION_STATES),
      attendance: z.enum(ATTENDANCES).nullable(),
      effort: z.int().nullable(),
      ...countedPitches,
      heldOn: day,
      coachName: z.string(),
    }),
  ),
  games: z.array(
    z.strictObject({ id: z.string(), thrownOn: day, kind: z.enum(THROW_KINDS), pitches: z.int() }),
  ),
  outings: z.array(outingAnswer),
  weeks: z.array(weekOfThrows),
  changes: checkpointChanges,
});

/** The value of {@link seasonView}. */
export type SeasonView = z.output<typeof seasonView>;

/** Reads the season of the athlete in hand. */
export async function seasonFor(scope: Scope): Promise<SeasonView> {
  const { db, athlete, nowMs, today } = scope;
  const { athleteId, zone } = athlete;
  const sinceDay = addMonths(today, -12);
  const settings = await findSettings(db);
  const arm = await armOf(db, athleteId, nowMs);
  const log = await throwLog(db, athleteId, FIRST_DAY);
  const firstDay = [sinceDay, ...log.map(({ thrownOn }) => thrownOn)].sort()[0] ?? sinceDay;
  const evidence = await loadEvidence(scope);
  return {
    athlete: await headOf(scope),
    today,
    sinceDay,
    maxOpenCorrections: settings?.maxOpenCorrections ?? 0,
    hasConsent: await consentIsLive(db, athleteId, "video"),
    arm: answerFor({ ...arm, day: today }),
    pain: await painFor(scope),
    rounds: (await roundsOf(db, athleteId, 0)).map((round) => ({
      id: round.id,
      state: round.state,
      receivedOn: dayOf(round.receivedAtMs, zone),
      endedOn: round.endedAtMs === null ? null : dayOf(round.endedAtMs, zone),
    })),
    corrections: evidence.corrections.map((record) => correctionAnswer(record, zone)),
    judged: await judgedFor(scope, sinceDay),
    sessions: await heldSessions(scope),
    games: currentEntries(log)
      .filter((entry) => isOutingKind(entry.kind) && entry.pitches > 0)
      .map(({ id, thrownOn, kind, pitches }) => ({ id, thrownOn, kind, pitches })),
    outings: await plannedOutings(db, athleteId, today),
    weeks: throwsByWeek(log, firstDay, today),
    changes: changesSince(evidence, zone),
  };
}

function correctionAnswer({ standing, ...row }: CorrectionRecord, zone: string) {
  return {
    id: row.id,
    ...{ roundId: row.roundId, clipId: row.clipId, frame: row.frame },
    checkpointId: row.checkpointId,
    checkpointName: row.checkpointName,
    phase: row.phase,
    cue: row.cue,
    state: standing.state,
    cameBack: standing.cameBack,
    givenOn: dayOf(standing.history[0]?.fromMs ?? 0, zone),
    spans: correctionSpans(standing.history, zone),
  };
}

/** What was judged, one list a checkpoint, in the order the delivery runs. */
async function judgedFor({ db, athlete }: Scope, sinceDay: string): Promise<SeasonView["judged"]> {
  const rows = await judgementsOf(db, athlete.athleteId, sinceDay);
  const checkpoints = new Map(rows.map((row) => [row.checkpointId, row]));
  return [...checkpoints.values()]
    .sort((a, b) => a.position - b.position)
    .map(({ checkpointId, checkpointName, phase }) => ({
      checkpointId,
      name: checkpointName,
      phase,
      judgements: rows
        .filter((row) => row.checkpointId === checkpointId)
        .map(({ id, judgedOn, view, score, ...coach }) => ({
          id,
          judgedOn,
          view,
          score,
          coachName: fullName({ givenName: coach.coachGivenName, familyName: coach.coachFamilyName }),
        })),
    }));
}

async function heldSessions({ db, athlete }: Scope): Promise<SeasonView["sessions"]> {
  const rows = await sessionsOf(db, athlete.athleteId, 0);
  return rows.map(({ id, kind, state, attendance, effort, startsAtMs, zone, ...others }) => ({
    id,
    kind,
    state,
    attendance,
    effort,
    ...{ strikes: others.strikes, topSpeed: others.topSpeed, speedUnit: others.speedUnit },
    heldOn: dayOf(startsAtMs, zone),
    coachName: fullName({ givenName: others.coachGivenName, familyName: others.coachFamilyName }),
  }));
}
