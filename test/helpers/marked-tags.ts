import type { MetadataTags } from "mediabunny";

/** Tags such as phones write; every value holds a text that must not be found in what is served. */
export const MARKED_TEXTS = ["Marked title", "+47.3769+008.5417", "Marked phone", "2031-05-04T16:20:00"];

/** The tags themselves, with a captured rate of `capturedFps` frames a second as Android writes it. */
export function markedTags(capturedFps = 240): MetadataTags {
  const rate = Buffer.alloc(4);
  rate.writeFloatBE(capturedFps);
  return {
    title: "Marked title",
    raw: {
      "com.apple.quicktime.location.ISO6709": "+47.3769+008.5417/",
      "com.apple.quicktime.model": "Marked phone",
      "com.apple.quicktime.creationdate": "2031-05-04T16:20:00-0400",
      "com.android.capture.fps": new Uint8Array(rate),
    },
  };
}
