import type { Connections } from "@/db/client";
import {
  lineUpConversions,
  nextToConvert,
  noteConversion,
  noteNoProgram,
  type WaitingFilm,
} from "@/server/data/conversions";
import { unitOfWork } from "@/server/data/unit-of-work";
import { log } from "@/server/log";
import { hasRoomFor, type Reserve, removeClip } from "@/server/media/clip-store";
import { type Converter, makePlayableFilm } from "@/server/media/playable-film";

/** Where films lie, and the program that copies them; null where this machine has none. */
export interface ConversionDesk {
  clipsFolder: string;
  converter: Converter | null;
  reserve?: Reserve | undefined;
}

/** Progress is written down in steps of this share of the film. */
const SHARE_STEP = 0.02;

/** A copy for every browser may be larger than an original in a younger codec: room is asked for this many times it. */
const ROOM_TIMES = 3;

/**
 * Makes the copies that films wait for which not every browser draws, one at a time. Stopped at any point, it begins
 * that film again the next time. Without a program each is told so, and made once a program is there. A film whose
 * copy cannot be made stays as it came.
 */
export async function convertClips(on: Connections, desk: ConversionDesk): Promise<void> {
  const { converter } = desk;
  if (converter === null) return unitOfWork(on, (tx) => noteNoProgram(tx));
  await unitOfWork(on, (tx) => lineUpConversions(tx));
  for (let film = await nextToConvert(on.reader); film; film = await nextToConvert(on.reader)) {
    if (!(await hasRoomFor(desk.clipsFolder, film.byteCount * ROOM_TIMES, desk.reserve))) return;
    await convertOne(on, desk.clipsFolder, film, converter);
  }
}

async function convertOne(on: Connections, clipsFolder: string, film: WaitingFilm, converter: Converter) {
  const note = (state: "running" | "made" | "failed", share: number | null) =>
    unitOfWork(on, (tx) => noteConversion(tx, film.clipId, state, share));
  await note("running", 0);
  let noted = 0;
  let writing: Promise<unknown> = Promise.resolve();
  const outcome = await makePlayableFilm(clipsFolder, film, converter, (share) => {
    if (share < noted + SHARE_STEP) return;
    noted = share;
    writing = writing.then(() => note("running", share));
  });
  await writing;
  if (!outcome.made)
    log.warn({ clipId: film.clipId, why: outcome.why, said: outcome.said }, "a clip was not copied");
  const isKept = await note(outcome.made ? "made" : "failed", null);
  if (!isKept) await removeClip(clipsFolder, film.storageName);
}
