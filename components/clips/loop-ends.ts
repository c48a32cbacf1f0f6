import { DELIVERY_EVENTS, EVENT_WORDS } from "@/server/domain/mechanics/delivery";
import type { MarkedFrames } from "./event-strip";

/** A frame at which a loop may begin or end, and what is there. */
export interface LoopEnd {
  frame: number;
  label: string;
}

/**
 * The frames between which a clip can be played over and over, each once: moments marked on one frame, or on the clip's
 * first or last, share their place in the list.
 * @example with the first movement on frame 0 of 90: "Start of the clip, First movement" and "End of the clip"
 */
export function loopEnds(marks: MarkedFrames, last: number): LoopEnd[] {
  const all: LoopEnd[] = [
    { frame: 0, label: "Start of the clip" },
    ...DELIVERY_EVENTS.flatMap((event) => {
      const frame = marks[event];
      return frame === undefined ? [] : [{ frame, label: EVENT_WORDS[event] }];
    }),
    { frame: last, label: "End of the clip" },
  ];
  const byFrame = new Map<number, string[]>();
  for (const { frame, label } of all) byFrame.set(frame, [...(byFrame.get(frame) ?? []), label]);
  return [...byFrame].map(([frame, labels]) => ({ frame, label: labels.join(", ") }));
}
