import type { ConversionState } from "@/server/domain/clips/clip";

/** What a player needs to know of a clip. */
export interface PlayedClip {
  id: string;
  state: "waiting" | "ready" | "drawing" | "replaced" | "expired";
  frameTimesMs: readonly number[];
  hasPoster: boolean;
  widthPx: number | null;
  heightPx: number | null;
  /** Frames a second as recorded; null while nobody has said. */
  capturedFps: number | null;
  /** Where the copy stands that every browser draws; null where none is needed. */
  conversion: ConversionState | null;
}

/** Where the film of a clip is. */
export const clipVideoAddress = (clipId: string): string => `/api/clips/${clipId}/video`;

/**
 * Where the copy of a clip is that every browser draws. A browser holds what came from one address for minutes, whatever
 * it was told, so the copy has one of its own.
 */
export const clipCopyAddress = (clipId: string): string => `${clipVideoAddress(clipId)}?copy`;

/** Where what can be drawn of a clip is: its copy once one is made, else the film as it was sent. */
export const drawableAddress = ({ id, conversion }: Pick<PlayedClip, "id" | "conversion">): string =>
  conversion === "made" ? clipCopyAddress(id) : clipVideoAddress(id);

/** Where the still picture of a clip is, and where one is put. */
export const clipPosterAddress = (clipId: string): string => `/api/clips/${clipId}/poster`;
