import type { ClipStart } from "./use-clip-in-hand";

/** A frame of a clip in a round's room. */
export interface RoomPlace {
  roundId: string;
  clipId: string;
  /** Counted from 0; null for the clip's first. */
  frame: number | null;
}

/**
 * The address of a room on a frame, which is counted from 1 there, as every screen does.
 * @example roomAddress({ roundId: "rnd_1", clipId: "clp_1", frame: 108 }) // "/reviews/rnd_1?clip=clp_1&frame=109"
 */
export function roomAddress({ roundId, clipId, frame }: RoomPlace): string {
  const words = new URLSearchParams({ clip: clipId, frame: String((frame ?? 0) + 1) });
  return `/reviews/${roundId}?${words}`;
}

/** The reverse of {@link roomAddress}; undefined where the address names no clip, and the first frame for no number. */
export function frameAsked(
  words: Readonly<Record<string, string | string[] | undefined>>,
): ClipStart | undefined {
  const { clip, frame } = words;
  if (typeof clip !== "string" || clip === "") return undefined;
  const asked = Number(frame);
  return { clipId: clip, frame: Number.isSafeInteger(asked) && asked >= 1 ? asked - 1 : 0 };
}
