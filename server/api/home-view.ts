import { z } from "zod";
import { findSettings } from "@/server/data/academy-settings";
import { armOf } from "@/server/data/arms";
import { consentIsLive } from "@/server/data/consents";
import { correctionsOf } from "@/server/data/corrections";
import { roundsOf } from "@/server/data/season";
import { comingSessionsOf } from "@/server/data/sessions";
import { may } from "@/server/domain/access/rights";
import { SESSION_KINDS } from "@/server/domain/calendar/session-kind";
import { DELIVERY_PHASES } from "@/server/domain/mechanics/delivery";
import { CORRECTION_STATES, isOpen } from "@/server/domain/reviews/correction-state";
import { asTheDeliveryRuns } from "@/server/domain/reviews/recap";
import { isEnded, ROUND_STATES } from "@/server/domain/reviews/round-state";
import { answerFor, armAnswer } from "./arm-answer";
import { athleteHead, headOf } from "./athlete-head";
import type { Scope } from "./context";
import { painAnswer, painFor } from "./pain-answer";

/** What a family's first screen shows: what is worked on, when they come in, what the book leaves today. */
export const homeView = z.strictObject({
  athlete: athleteHead,
  today: z.string(),
  nowMs: z.number(),
  hasConsent: z.boolean(),
  mayDecide: z.boolean(),
  maxOpenCorrections: z.int(),
  corrections: z.array(
    z.strictObject({
      id: z.string(),
      roundId: z.string(),
      checkpointName: z.string(),
      phase: z.enum(DELIVERY_PHASES),
      cue: z.string(),
      drill: z.string(),
      state: z.enum(CORRECTION_STATES),
      cameBack: z.boolean(),
    }),
  ),
  /** The round that goes on, the latest if there are several; null when none does. */
  round: z
    .strictObject({
      id: z.string(),
      state: z.enum(ROUND_STATES),
      dueAtMs: z.number().nullable(),
      replyFrom: z.string().nullable(),
      lapsesOn: z.string().nullable(),
    })
    .nullable(),
  sessions: z.array(
    z.strictObject({
      id: z.string(),
      kind: z.enum(SESSION_KINDS),
      startsAtMs: z.number(),
      zone: z.string(),
      siteName: z.string(),
      laneName: z.string(),
      coachName: z.string(),
      plannedPitches: z.int(),
    }),
  ),
  pain: painAnswer,
  arm: armAnswer,
});

/** The value of {@link homeView}. */
export type HomeView = z.output<typeof homeView>;

/** Reads the first screen of the athlete in hand. */
export async function homeFor(scope: Scope): Promise<HomeView> {
  const { db, athlete, nowMs, today } = scope;
  const { athleteId } = athlete;
  const settings = await findSettings(db);
  const arm = await armOf(db, athleteId, nowMs);
  return {
    athlete: await headOf(scope),
    today,
    nowMs,
    hasConsent: await consentIsLive(db, athleteId, "video"),
    mayDecide: may("consent.decide", scope.relations),
    maxOpenCorrections: settings?.maxOpenCorrections ?? 0,
    corrections: await openCorrections(scope),
    round: await openRound(scope),
    sessions: (await comingSessionsOf(db, athleteId, nowMs)).map((card) => {
      const { id, kind, startsAtMs, zone, siteName, laneName, coachName } = card;
      const own = card.athletes.find((each) => each.athleteId === athleteId);
      return {
        id,
        kind,
        startsAtMs,
        zone,
        siteName,
        laneName,
        coachName,
        plannedPitches: own?.plannedPitches ?? 0,
      };
    }),
    pain: await painFor(scope),
    arm: answerFor({ ...arm, day: today }),
  };
}

async function openCorrections({ db, athlete }: Scope): Promise<HomeView["corrections"]> {
  const open = (await correctionsOf(db, athlete.athleteId)).filter(({ standing }) => isOpen(standing.state));
  return asTheDeliveryRuns(open.map((row) => ({ ...row, frame: null }))).map(({ standing, ...row }) => ({
    id: row.id,
    roundId: row.roundId,
    checkpointName: row.checkpointName,
    phase: row.phase,
    cue: row.cue,
    drill: row.drill,
    state: standing.state,
    cameBack: standing.cameBack,
  }));
}

async function openRound({ db, athlete }: Scope): Promise<HomeView["round"]> {
  const round = (await roundsOf(db, athlete.athleteId, 0)).findLast(({ state }) => !isEnded(state));
  if (!round) return null;
  const { id, state, dueAtMs, replyFrom, lapsesOn } = round;
  return { id, state, dueAtMs, replyFrom, lapsesOn };
}
