import type { HeldFrame } from "./frame-window";
import type { PictureSize } from "./picture-place";

/** Draws a held picture over the whole of a canvas, which is given the picture's own pixels. */
export function paintHeld(held: HeldFrame, canvas: HTMLCanvasElement | null, size: PictureSize): void {
  const context = canvas?.getContext("2d", { alpha: false });
  if (!canvas || !context) return;
  if (canvas.width !== size.widthPx) canvas.width = size.widthPx;
  if (canvas.height !== size.heightPx) canvas.height = size.heightPx;
  held.paint(context);
}
