/** Where the picture of a clip stands. Frames count from 0. */
export interface Place {
  /** The frame on the picture, by the word of the browser or of the decoded picture itself. */
  frame: number;
  /** The frame asked for; differs from `frame` while the picture follows. */
  wanted: number;
  /** False when the browser would not show the very frame that was asked for. */
  isExact: boolean;
  /** What is seen: the film, or the canvas over it. */
  shownBy: "film" | "canvas";
  /** Whether decoded pictures are held ready, or the film is sought one by one. */
  source: "decoded" | "film";
  /** Whether held pictures are played over and over; the film stands meanwhile, and the clip plays all the same. */
  isLooping: boolean;
}

/** As a clip is opened. */
export const FIRST_PLACE: Place = {
  ...{ frame: 0, wanted: 0, isExact: true, shownBy: "film", source: "film", isLooping: false },
};
