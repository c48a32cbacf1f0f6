import type { PictureSize } from "./picture-place";

/** A part of a picture in its own pixels, and where it is drawn: x, y, width and height of each. */
export type DrawnPart = [number, number, number, number, number, number, number, number];

/** Draws a part of what is on the picture now. @returns false while there is nothing to draw */
export type DrawPicture = (context: CanvasRenderingContext2D, ...part: DrawnPart) => boolean;

/** Draws a part of what an element shows; the part in pixels of the upright picture. */
export function drawShown(
  shown: HTMLVideoElement | HTMLCanvasElement | null,
  { widthPx, heightPx }: PictureSize,
  context: CanvasRenderingContext2D,
  [sx, sy, sw, sh, ...to]: DrawnPart,
): boolean {
  if (!shown) return false;
  const isFilm = shown instanceof HTMLVideoElement;
  const width = isFilm ? shown.videoWidth : shown.width;
  const height = isFilm ? shown.videoHeight : shown.height;
  if (width === 0 || (isFilm && shown.readyState < HTMLMediaElement.HAVE_CURRENT_DATA)) return false;
  const across = width / widthPx;
  const down = height / heightPx;
  context.drawImage(shown, sx * across, sy * down, sw * across, sh * down, ...to);
  return true;
}
