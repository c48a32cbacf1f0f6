import { env } from "@/server/env";
import type { Reserve } from "./clip-store";

/** Where clips are kept, under opaque names. */
export const clipsFolder = (): string => `${env.dataFolder}/clips`;

/** Where half-sent files lie; beside the clips, so that a finished one is moved and not copied. */
export const uploadsFolder = (): string => `${env.dataFolder}/uploads`;

/** The reserve that the settings name for the disk; undefined leaves the default. */
export function reserveSet(): Reserve | undefined {
  const bytes = env.UPLOAD_RESERVE_BYTES;
  return bytes === undefined ? undefined : { fraction: 1, atMostBytes: bytes };
}
