import { findClip } from "@/server/data/clips";
import { findMeasurement, keepMeasurements } from "@/server/data/measurements";
import { findRemeasure, finishRemeasure } from "@/server/data/remeasure";
import { playableClips } from "@/server/data/round-clips";
import { athleteCard } from "@/server/data/season";
import { drawingProgress } from "@/server/data/today";
import { Refusal } from "@/server/domain/errors/refusal";
import { framesOf } from "@/server/domain/mechanics/measure-again";
import { fullName } from "@/server/domain/people/person";
import type { Scope } from "../context";
import type { BlindView } from "./shapes";
import { type PlacedPoints, valueOfPoints } from "./value-of-points";

/** A coach's second measure: its points in the order asked for, on the frames of the first. */
export interface SecondMeasure extends PlacedPoints {
  requestId: string;
}

/** A frame to be measured blind: neither its points nor their value leave the server. */
export async function loadBlind(scope: Scope, requestId: string): Promise<BlindView> {
  const { db, athlete } = scope;
  const { first, clip } = await requestInHand(scope, requestId);
  return {
    ...{ requestId, kind: first.kind, view: first.view, frame: first.frame, clip },
    athleteName: fullName(await athleteCard(db, athlete.athleteId)),
    drawing: await drawingProgress(db),
    frames: framesOf(first),
  };
}

/**
 * Keeps a second measure and tells both values.
 * @throws Refusal when it is another coach's, was answered before, its film is gone, or the points give no value
 */
export async function measureAgain(scope: Scope, second: SecondMeasure) {
  const { db, actor, athlete, today, nowMs } = scope;
  const { first, clip } = await requestInHand(scope, second.requestId);
  const { throws } = await athleteCard(db, athlete.athleteId);
  const measure = valueOfPoints(first, second, { throws, clip });
  const measuring = {
    ...{ athleteId: athlete.athleteId, reviewId: null, repeatOfId: first.id },
    ...{ coachPersonId: actor.personId, measuredOn: today, atMs: nowMs },
  };
  const [doneMeasurementId = ""] = await keepMeasurements(db, measuring, [measure]);
  const isFirst = await finishRemeasure(db, second.requestId, { doneAtMs: nowMs, doneMeasurementId });
  if (!isFirst) throw new Refusal({ reason: "changed_meanwhile" });
  return { kind: first.kind, first: first.value, again: measure.value };
}

async function requestInHand({ db, actor }: Scope, requestId: string) {
  const request = await findRemeasure(db, requestId);
  const first = request ? await findMeasurement(db, request.measurementId) : null;
  const isTheirs = request?.forPersonId === null || request?.forPersonId === actor.personId;
  if (!request || !first || !isTheirs) throw new Refusal({ reason: "not_found" });
  if (request.doneAtMs !== null) throw new Refusal({ reason: "changed_meanwhile" });
  const row = await findClip(db, first.clipId);
  const clips = await playableClips(db, row?.roundId ?? "", [first.clipId]);
  const clip = clips.find((each) => each.id === first.clipId);
  if (!clip || clip.state === "expired") throw new Refusal({ reason: "clip_not_kept" });
  return { first, clip };
}
