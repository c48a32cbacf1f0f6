import type { Db } from "@/db/client";
import { noteFilmedSpeed } from "@/server/data/captured-rates";
import { putClipsIntoRound, replaceClips, waitingClips } from "@/server/data/clips";
import { consentIsLive } from "@/server/data/consents";
import { tellOfSessionsWithoutRoom } from "@/server/data/flag-sessions";
import { nameOfAthlete } from "@/server/data/names";
import { type PromiseHours, promisedAtMs, promiseHours, resumedAtMs } from "@/server/data/promise-hours";
import { tellOfClips } from "@/server/data/round-notices";
import { findRound, homeSiteOf, openRound, type Round, stepRound } from "@/server/data/rounds";
import { insertThrowEntry } from "@/server/data/throw-log";
import type { FilmedSpeed } from "@/server/domain/clips/capture-rate";
import type { ClipPart } from "@/server/domain/clips/clip";
import { pitchesToLog, type SendClipInput, sendingRefusal } from "@/server/domain/clips/send-clip";
import { Refusal } from "@/server/domain/errors/refusal";
import { hasLapsed } from "@/server/domain/reviews/reply-window";
import { ROUND_STEP_WORDS } from "@/server/domain/reviews/round-state";
import { entryRefusalInWords } from "@/server/domain/throwing/refusal-in-words";
import { entryRefusals, PLAUSIBLE_MAX_PITCHES } from "@/server/domain/throwing/validate-entry";
import { refuseIfLeft } from "./athlete-leaves";
import type { Scope } from "./context";

/** Clips on their way into a round; without a round they begin one. */
export interface Sending {
  roundId: string | null;
  clips: readonly SendClipInput[];
  /** How fast all of them were recorded, as far as the files do not say. */
  filmedSpeed: FilmedSpeed;
}

/** Where the clips went, by when they are owed a look, and how many pitches they put on the log. */
export interface SentClips {
  roundId: string;
  dueAtMs: number;
  pitchesLogged: number;
}

/** The place in a round that clips come to. */
interface Arrival {
  roundId: string;
  part: ClipPart;
  dueAtMs: number;
  coachPersonId: string | null;
  hours: PromiseHours;
}

/**
 * Sends waiting clips: into a new round, as the reply to a review, or in place of a clip that could not be used. The
 * pitches they cost go on the log, those already in an outing left out, and family and coach are told.
 * @throws Refusal when they cannot be sent together or the round takes no clip now; nothing is written then
 */
export async function sendClips(scope: Scope, { roundId, clips, filmedSpeed }: Sending): Promise<SentClips> {
  const { db, athlete, nowMs, today } = scope;
  await refuseIfLeft(scope, athlete.athleteId, today);
  await checkClips(scope, clips);
  const arrival = roundId === null ? await beginRound(scope) : await joinRound(scope, roundId);
  await putClipsIntoRound(db, arrival.roundId, arrival.part, clips);
  await noteFilmedSpeed(
    db,
    clips.map(({ clipId }) => clipId),
    filmedSpeed,
  );
  await logThrows(scope, clips);
  const round = { athleteId: athlete.athleteId, coachPersonId: arrival.coachPersonId };
  await tellOfClips(db, round, { ...arrival, isReply: arrival.part === "reply" }, nowMs);
  return { roundId: arrival.roundId, dueAtMs: arrival.dueAtMs, pitchesLogged: pitchesToLog(clips) };
}

async function checkClips(scope: Scope, clips: readonly SendClipInput[]): Promise<void> {
  const { db, actor, athlete, today } = scope;
  const { givenName } = await nameOfAthlete(db, athlete.athleteId);
  const isLive = await consentIsLive(db, athlete.athleteId, "video");
  const refusal = sendingRefusal(clips, { consentIsLive: isLive, athleteGivenName: givenName, today });
  if (refusal) throw new Refusal(refusal);
  const bounds = { bornOn: athlete.bornOn, today, plausibleMaxPitches: PLAUSIBLE_MAX_PITCHES };
  for (const { filmedOn, pitchesThrown } of clips) {
    const [wrong] = entryRefusals({ thrownOn: filmedOn, pitches: pitchesThrown }, bounds);
    if (wrong) throw new Refusal({ reason: "throw_entry_invalid", why: entryRefusalInWords(wrong) });
  }
  const waiting = new Set((await waitingClips(db, athlete.athleteId, actor.personId)).map((clip) => clip.id));
  if (clips.some((clip) => !waiting.has(clip.clipId))) throw new Refusal({ reason: "upload_missing" });
}

async function beginRound({ db, actor, athlete, nowMs }: Scope): Promise<Arrival> {
  const { athleteId } = athlete;
  const siteId = await homeSiteOf(db, athleteId);
  const hours = await promiseHours(db, siteId);
  const dueAtMs = await promisedAtMs(db, hours, nowMs);
  const roundId = await openRound(db, { athleteId, siteId, dueAtMs, actorPersonId: actor.personId, nowMs });
  return { roundId, part: "first", dueAtMs, coachPersonId: null, hours };
}

async function joinRound(scope: Scope, roundId: string): Promise<Arrival> {
  const row = await findRound(scope.db, roundId);
  if (!row) throw new Refusal({ reason: "not_found" });
  if (hasLapsed(row.lapsesOn, scope.today)) {
    throw new Refusal({ reason: "round_state", action: ROUND_STEP_WORDS.answered, state: "lapsed" });
  }
  const hours = await promiseHours(scope.db, row.siteId);
  return row.state === "retake" ? replaceInRound(scope, row, hours) : answerRound(scope, row, hours);
}

/** The family's turn is over: nothing is asked of them any more. */
const ASKED_NOTHING = { replyFrom: null, lapsesOn: null } as const;

async function answerRound({ db, actor, nowMs }: Scope, row: Round, hours: PromiseHours): Promise<Arrival> {
  const dueAtMs = await promisedAtMs(db, hours, nowMs);
  const changes = { ...ASKED_NOTHING, answeredAtMs: nowMs, dueAtMs };
  await stepRound(db, row, { step: "answered", actorPersonId: actor.personId, nowMs, changes });
  return { roundId: row.id, part: "reply", dueAtMs, coachPersonId: row.coachPersonId, hours };
}

async function replaceInRound(
  { db, actor, nowMs }: Scope,
  row: Round,
  hours: PromiseHours,
): Promise<Arrival> {
  const part = row.retakeFrom === "answered" ? "reply" : "first";
  const dueAtMs = resumedAtMs(hours, row.pausedOpenMs ?? 0, nowMs);
  await replaceClips(db, row.id, part);
  const changes = { ...ASKED_NOTHING, dueAtMs, pausedOpenMs: null, retakeFrom: null, retakeRemarkId: null };
  await stepRound(db, row, { step: "clip_replaced", actorPersonId: actor.personId, nowMs, changes });
  return { roundId: row.id, part, dueAtMs, coachPersonId: row.coachPersonId, hours };
}

async function logThrows({ db, actor, athlete, nowMs }: Scope, clips: readonly SendClipInput[]) {
  if (pitchesToLog(clips) === 0) return;
  for (const { clipId, filmedOn, pitchesThrown, alreadyOnLog } of clips) {
    if (alreadyOnLog || pitchesThrown === 0) continue;
    await insertThrowEntry(db, {
      athleteId: athlete.athleteId,
      thrownOn: filmedOn,
      kind: "bullpen",
      pitches: pitchesThrown,
      clipId,
      reportedByPersonId: actor.personId,
      reportedAtMs: nowMs,
    });
  }
  await tellOfSessionsWithoutRoom(db, athlete.athleteId, nowMs);
}

/** Whether clips of the athlete may go into the round: into a new one always, else only into one of their own. */
export async function isRoundOf(db: Db, roundId: string | null, athleteId: string): Promise<boolean> {
  if (roundId === null) return true;
  return (await findRound(db, roundId))?.athleteId === athleteId;
}
