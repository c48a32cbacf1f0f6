import { and, asc, eq, inArray, isNotNull } from "drizzle-orm";
import type { Db } from "@/db/client";
import { clip } from "@/db/schema/clips";
import type { ConversionState } from "@/server/domain/clips/clip";

/** A film that waits for a copy that every browser draws. */
export interface WaitingFilm {
  clipId: string;
  storageName: string;
  byteCount: number;
  durationMs: number;
  widthPx: number;
  heightPx: number;
  frameTimesMs: number[];
}

/** Clips whose film is there and may still be looked at. */
const HAS_FILM = and(inArray(clip.state, ["ready", "waiting"]), isNotNull(clip.storageName));

/** Puts those into line again that a server which ended had in hand, and those that wanted for a program. */
export async function lineUpConversions(tx: Db): Promise<void> {
  await tx
    .update(clip)
    .set({ conversion: "waiting", conversionShare: 0 })
    .where(and(HAS_FILM, inArray(clip.conversion, ["running", "no_program"])));
}

/** Says of every film in line that there is no program to make its copy. */
export async function noteNoProgram(tx: Db): Promise<void> {
  await tx
    .update(clip)
    .set({ conversion: "no_program", conversionShare: null })
    .where(and(HAS_FILM, inArray(clip.conversion, ["waiting", "running"])));
}

/** The film whose copy is to be made next: what was sent with a round first, then by age; null when none waits. */
export async function nextToConvert(db: Db): Promise<WaitingFilm | null> {
  const [row] = await db
    .select()
    .from(clip)
    .where(and(HAS_FILM, eq(clip.conversion, "waiting")))
    .orderBy(asc(clip.state), asc(clip.createdAtMs), asc(clip.id))
    .limit(1);
  if (!row?.storageName) return null;
  return {
    clipId: row.id,
    storageName: row.storageName,
    byteCount: row.byteCount ?? 0,
    durationMs: row.durationMs ?? 0,
    widthPx: row.widthPx ?? 0,
    heightPx: row.heightPx ?? 0,
    frameTimesMs: JSON.parse(row.frameTimesMs ?? "[]"),
  };
}

/**
 * Notes how far the copy of a clip's film is; `share` is 0 to 1, null once it has ended.
 * @returns false when the film is not kept any more
 */
export async function noteConversion(
  tx: Db,
  clipId: string,
  conversion: ConversionState,
  share: number | null,
): Promise<boolean> {
  const noted = await tx
    .update(clip)
    .set({ conversion, conversionShare: share })
    .where(and(eq(clip.id, clipId), HAS_FILM))
    .returning({ id: clip.id });
  return noted.length === 1;
}
