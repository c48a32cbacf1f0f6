import type { PlayedClip } from "./played-clip";

/** Narrower than this a small picture would grow taller than its strip can bear; what is narrower stands within it. */
const NARROWEST = 3 / 4;
const WIDEST = 16 / 9;
/** For a clip whose size nobody knows yet. */
const UNKNOWN = 16 / 10;

/**
 * Width by height of the room a clip's small pictures take, known before they are drawn, so that nothing jumps. The
 * whole picture stands in it, an upright phone's too.
 * @example filmRatio({ widthPx: 1080, heightPx: 1920 }) // 0.75
 */
export function filmRatio({ widthPx, heightPx }: Pick<PlayedClip, "widthPx" | "heightPx">): number {
  if (!widthPx || !heightPx) return UNKNOWN;
  return Math.min(WIDEST, Math.max(NARROWEST, widthPx / heightPx));
}
