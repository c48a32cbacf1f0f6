import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "@playwright/test";
import { numberedVp9 } from "./browser-vp9";
import { evenTimesMs, type NumberedShape, numberedMp4, unevenTimesMs } from "./numbered-clip";

/** A clip of the catalogue: what is particular about it, and its file. */
export interface CatalogueClip {
  name: string;
  /** The number its frames carry. */
  clip: number;
  /** When each frame of it is shown. */
  timesMs: readonly number[];
  file: Uint8Array;
}

type Shape = Omit<NumberedShape, "clip">;

/** A camera that goes over from 60 frames a second into slow motion stretched eight times, and back. */
function rampedTimesMs(): number[] {
  let timeMs = 0;
  return Array.from({ length: 180 }, (_, index) => {
    const at = timeMs;
    timeMs += index >= 60 && index < 120 ? 1000 / 30 : 1000 / 240;
    return at;
  });
}

/** What phones send, by name: every rate, turn and way of storing that a film may come in. */
export const SHAPES: Readonly<Record<string, Shape>> = {
  "30 frames a second": { timesMs: evenTimesMs(120, 30), group: 15 },
  "60 frames a second": { timesMs: evenTimesMs(180, 60), group: 30 },
  "120 frames a second": { timesMs: evenTimesMs(240, 120), group: 30 },
  "240 frames a second": { timesMs: evenTimesMs(480, 240), group: 60 },
  "a variable rate": { timesMs: unevenTimesMs(180), group: 30 },
  "turned 90 degrees": { timesMs: evenTimesMs(120, 60), group: 30, turn: 90 },
  "turned 180 degrees": { timesMs: evenTimesMs(120, 60), group: 30, turn: 180 },
  "turned 270 degrees at a variable rate": { timesMs: unevenTimesMs(180), group: 30, turn: 270 },
  "trimmed by an edit list": {
    timesMs: evenTimesMs(180, 60).map((timeMs) => timeMs - 400),
    group: 90,
  },
  "one long group": { timesMs: evenTimesMs(300, 60), group: 300 },
  "key frames alone": { timesMs: evenTimesMs(120, 60), group: 1 },
  "slow motion stretched eight times": {
    timesMs: evenTimesMs(240, 30),
    group: 30,
    tags: { raw: { "com.android.capture.fps": "240" } },
  },
  "a rate that ramps": { timesMs: rampedTimesMs(), group: 30 },
};

/** The shape a browser encodes. */
const VP9 = { name: "VP9 in WebM", timesMs: evenTimesMs(180, 60) };

/**
 * Frames stored in another order than they are shown in, as many phones do; the encoder that draws the others cannot. Its
 * 150 pictures carry the clip's number 30. Made once: `ffmpeg -f rawvideo -pix_fmt rgba -s 128x96 -r 60 -i pictures
 * -c:v libx264 -preset slow -bf 3 -b_strategy 0 -g 50 -crf 28 -pix_fmt yuv420p -movflags +faststart reordered.mp4`.
 */
const REORDERED = { name: "frames stored out of order", clip: 30, timesMs: evenTimesMs(150, 60) };
const REORDERED_FILE = fileURLToPath(new URL("./reordered.mp4", import.meta.url));

/** Every clip of the catalogue by its name, in the order that {@link catalogue} gives them. */
export const CLIP_NAMES: readonly string[] = [...Object.keys(SHAPES), VP9.name, REORDERED.name];

/** The clips, each with a number of its own. @param page any page of the academy, whose browser encodes VP9 */
export async function catalogue(page: Page): Promise<CatalogueClip[]> {
  const clips: CatalogueClip[] = [];
  for (const [clip, [name, shape]] of Object.entries(SHAPES).entries()) {
    const timesMs = shape.timesMs.filter((timeMs) => timeMs >= 0);
    clips.push({ name, clip, timesMs, file: await numberedMp4({ ...shape, clip }) });
  }
  const { name, timesMs } = VP9;
  const clip = clips.length;
  clips.push({ name, clip, timesMs, file: await numberedVp9(page, clip, timesMs) });
  clips.push({ ...REORDERED, file: readFileSync(REORDERED_FILE) });
  return clips;
}
