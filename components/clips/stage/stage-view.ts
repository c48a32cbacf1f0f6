/** How a picture lies on its stage: how large, shifted how far, and whether it is turned left to right. */
export interface StageView {
  /** 1 shows the whole picture, 8 an eighth of its width. */
  zoom: number;
  /** How far the middle of the picture lies from the middle of the stage, in widths and heights of the whole picture. */
  x: number;
  y: number;
  isMirrored: boolean;
}

/** A place on the stage, from its middle, in widths and heights of the whole picture: -0.5 to 0.5. */
export interface StagePlace {
  x: number;
  y: number;
}

/** As a clip is opened. */
export const WHOLE_PICTURE: StageView = { zoom: 1, x: 0, y: 0, isMirrored: false };

/** At eight times a pixel of a phone's film is as large as a fingertip's error; common practice, no source. */
export const MAX_ZOOM = 8;

/** What one press of a key or button does. Common practice, no source. */
export const ZOOM_STEP = 1.5;
export const PAN_STEP = 0.15;

/**
 * Enlarges by a factor so that what lies at a place stays there.
 * @example zoomAt(WHOLE_PICTURE, 2, { x: 0.5, y: 0 }) // zoom 2, x -0.5: the right edge stays
 */
export function zoomAt(view: StageView, factor: number, place: StagePlace = { x: 0, y: 0 }): StageView {
  const zoom = Math.max(1, Math.min(MAX_ZOOM, view.zoom * factor));
  const grown = zoom / view.zoom;
  return within({
    ...view,
    zoom,
    x: place.x - (place.x - view.x) * grown,
    y: place.y - (place.y - view.y) * grown,
  });
}

/** Shifts the picture; never so far that an edge of it leaves the edge of the stage. */
export function panBy(view: StageView, x: number, y: number): StageView {
  return within({ ...view, x: view.x + x, y: view.y + y });
}

/** Turns the picture left to right; what is in the middle of the stage stays there. */
export function mirrored(view: StageView): StageView {
  return { ...view, x: 0 - view.x, isMirrored: !view.isMirrored };
}

/** The whole picture again, turned as it is. */
export function wholeAgain(view: StageView): StageView {
  return { ...WHOLE_PICTURE, isMirrored: view.isMirrored };
}

/** What the style sheet is given. */
export function viewTransform({ zoom, x, y, isMirrored }: StageView): string {
  return `translate(${x * 100}%, ${y * 100}%) scale(${isMirrored ? -zoom : zoom}, ${zoom})`;
}

function within(view: StageView): StageView {
  const far = (view.zoom - 1) / 2;
  const bound = (shift: number) => Math.max(-far, Math.min(far, shift)) || 0;
  return { ...view, x: bound(view.x), y: bound(view.y) };
}
