import type { Db } from "@/db/client";
import { type BlindItemRow, blindItems, findBlindSet, ratedBy } from "@/server/data/blind-sets";
import { listCheckpoints } from "@/server/data/checkpoints";
import { consentIsLive } from "@/server/data/consents";
import { playableClips } from "@/server/data/round-clips";
import { drawingProgress } from "@/server/data/today";
import { Refusal } from "@/server/domain/errors/refusal";
import { framesOf } from "@/server/domain/mechanics/measure-again";
import type { Scope } from "../context";
import { measureOfItem } from "./rate-item";
import type { NextView, RatedFrame } from "./shapes";

/**
 * The frame of a set that the caller rates next: one whose film can be shown now before one that is still to be drawn.
 * Neither whose it is nor of which day, nor what anybody said of it, is in it.
 */
export async function loadNext({ db, actor }: Scope, setId: string): Promise<NextView> {
  const set = await findBlindSet(db, setId);
  if (!set) throw new Refusal({ reason: "not_found" });
  const items = await blindItems(db, setId);
  const rated = await ratedBy(db, setId, actor.personId);
  const isClosed = set.closedAtMs !== null;
  const left = items.filter(({ id }) => !rated.has(id));
  const open = isClosed ? [] : await stillShown(db, left);
  const next = open.find(({ state }) => state === "ready") ?? open[0];
  return {
    set: { id: set.id, name: set.name, isClosed },
    ...{ of: items.length, rated: rated.size, gone: isClosed ? 0 : left.length - open.length },
    drawing: await drawingProgress(db),
    item: next ? await asRated(db, next) : null,
  };
}

async function stillShown<Item extends { athleteId: string; state: string }>(
  db: Db,
  items: readonly Item[],
): Promise<Item[]> {
  const consents = new Map<string, boolean>();
  for (const { athleteId } of items) {
    if (!consents.has(athleteId)) consents.set(athleteId, await consentIsLive(db, athleteId, "video"));
  }
  return items.filter(
    ({ athleteId, state }) => (state === "ready" || state === "drawing") && consents.get(athleteId),
  );
}

async function asRated(db: Db, item: BlindItemRow): Promise<RatedFrame> {
  const { id, position, kind, view, frame, clipId } = item;
  const [clip] = await playableClips(db, "", [clipId]);
  const checkpoint = (await listCheckpoints(db)).find((each) => each.id === item.checkpointId);
  if (!clip || !checkpoint) throw new Refusal({ reason: "not_found" });
  const first = await measureOfItem(db, item);
  const { name, event, absentLooksLike, clearLooksLike } = checkpoint;
  return {
    ...{ id, position, kind, view, frames: first ? framesOf(first) : { here: frame } },
    checkpoint: { name, event, absentLooksLike, clearLooksLike },
    clip: withoutTraces(clip),
  };
}

function withoutTraces(clip: RatedFrame["clip"]): RatedFrame["clip"] {
  const { id, state, view, widthPx, heightPx, hasPoster, codec } = clip;
  const { conversion, conversionShare, capturedFps, frameCount, frameTimesMs } = clip;
  return {
    ...{ id, state, view, widthPx, heightPx, hasPoster, codec },
    ...{ conversion, conversionShare, capturedFps, frameCount, frameTimesMs },
  };
}
