/** What a player needs to know of a clip. */
export interface PlayedClip {
  id: string;
  state: "waiting" | "ready" | "drawing" | "replaced" | "expired";
  frameTimesMs: readonly number[];
  hasPoster: boolean;
  widthPx: number | null;
  heightPx: number | null;
}

/** Where the film of a clip is. */
export const clipVideoAddress = (clipId: string): string => `/api/clips/${clipId}/video`;

/** Where the still picture of a clip is, and where one is put. */
export const clipPosterAddress = (clipId: string): string => `/api/clips/${clipId}/poster`;
