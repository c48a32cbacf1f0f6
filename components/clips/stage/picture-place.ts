/** Where something lies on the screen, as `getBoundingClientRect` tells. */
export interface ScreenBox {
  left: number;
  top: number;
  width: number;
  height: number;
}

/** The size of the upright picture in its own pixels. */
export interface PictureSize {
  widthPx: number;
  heightPx: number;
}

/**
 * The place in the picture, in its own pixels, that lies under a place on the screen; outside of the picture it goes on
 * by the same measure.
 * @param box where the picture lies on the screen now, enlarged and shifted as it is
 * @example placeInPicture({ left: 10, top: 0, width: 200, height: 100 }, { widthPx: 400, heightPx: 200 }, false, 110, 50) // { x: 200, y: 100 }
 */
export function placeInPicture(
  box: ScreenBox,
  size: PictureSize,
  isMirrored: boolean,
  clientX: number,
  clientY: number,
): { x: number; y: number } {
  const across = box.width === 0 ? 0 : (clientX - box.left) / box.width;
  const down = box.height === 0 ? 0 : (clientY - box.top) / box.height;
  return { x: (isMirrored ? 1 - across : across) * size.widthPx, y: down * size.heightPx };
}
