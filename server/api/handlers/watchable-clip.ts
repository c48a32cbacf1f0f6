import { type Clip, findClip } from "@/server/data/clips";
import { consentIsLive } from "@/server/data/consents";
import { nameOfAthlete } from "@/server/data/names";
import { Refusal } from "@/server/domain/errors/refusal";
import type { RouteScope } from "../guard-route";

/** A clip whose film can be sent. */
export type WatchableClip = Clip & {
  storageName: string;
  contentType: string;
  sha256: string;
  byteCount: number;
};

/**
 * The clip when its film can be sent to the caller, whose right to the athlete has been checked. One that has not been
 * sent with a round yet is there for its sender alone.
 * @throws Refusal `consent_missing` once consent was withdrawn, `clip_not_kept` when the film was deleted, `not_found`
 */
export async function watchableClip(scope: RouteScope, clipId: string): Promise<WatchableClip> {
  const { db, actor, athlete } = scope;
  if (!(await consentIsLive(db, athlete.athleteId, "video"))) {
    const { givenName } = await nameOfAthlete(db, athlete.athleteId);
    throw new Refusal({ reason: "consent_missing", athleteGivenName: givenName });
  }
  const clip = await findClip(db, clipId);
  if (clip?.state === "expired") throw new Refusal({ reason: "clip_not_kept" });
  const isThere = clip?.state === "ready" || clip?.state === "replaced";
  const isOwnWaiting = clip?.state === "waiting" && clip.uploadedByPersonId === actor.personId;
  if (!(isThere || isOwnWaiting) || !isWhole(clip)) throw new Refusal({ reason: "not_found" });
  return clip;
}

function isWhole(clip: Clip | null): clip is WatchableClip {
  return Boolean(clip?.storageName && clip.contentType && clip.sha256 && clip.byteCount);
}
