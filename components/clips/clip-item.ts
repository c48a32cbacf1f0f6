import type { FilmedSpeed } from "@/server/domain/clips/capture-rate";
import type { ConversionState, PitchType } from "@/server/domain/clips/clip";
import type { SendClipInput } from "@/server/domain/clips/send-clip";
import type { CameraView } from "@/server/domain/mechanics/delivery";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

/**
 * Where a clip stands on its way: in line, being sent, held by the sender, waiting for the connection, stopped after
 * too many tries, looked at by the server, ready to be sent with a round, or refused.
 */
export type ClipStanding =
  | "in_line"
  | "sending"
  | "held"
  | "broken"
  | "stopped"
  | "looked_at"
  | "ready"
  | "refused";

/** A clip on its way from this page. */
export interface ClipItem {
  /** Of this page alone. */
  key: string;
  name: string;
  byteCount: number;
  sentBytes: number;
  standing: ClipStanding;
  /** Why it was refused. */
  sentence: string;
  clipId: string | null;
  /** Where the copy stands that every browser draws; null where none is needed or nothing is known yet. */
  conversion: ConversionState | null;
  pictureUrl: string | null;
}

/** What the family says of one clip; null where nothing has been said yet. */
export interface SaidOfClip {
  view: CameraView | null;
  pitchType: PitchType | null;
  pitchesThrown: number | null;
  alreadyOnLog: boolean;
  note: string;
}

/** What is said of a clip before anybody has said anything. */
export const NOTHING_SAID: SaidOfClip = {
  view: null,
  pitchType: null,
  pitchesThrown: null,
  alreadyOnLog: false,
  note: "",
};

/** Whether bytes of it still have to go, so that leaving the page would stop it. */
export function isUnderWay(standing: ClipStanding): boolean {
  return !["ready", "refused"].includes(standing);
}

const MEGABYTE = 1_000_000;

/** How far a clip is, in words: "12 of 48 MB". Whole megabytes, and less than one as "under 1 MB". */
export function progressInWords({ sentBytes, byteCount, standing }: ClipItem): string {
  const size = byteCount < MEGABYTE ? "under 1 MB" : `${Math.round(byteCount / MEGABYTE)} MB`;
  if (standing === "in_line") return `${size}, next in line`;
  if (standing === "looked_at") return `${size}, all sent: being checked`;
  const far = byteCount < MEGABYTE ? size : `${Math.floor(sentBytes / MEGABYTE)} of ${size}`;
  if (standing === "held") return `${far}, held`;
  if (standing === "broken") return `${far}, no connection: it goes on by itself`;
  if (standing === "stopped") return `${far}, stopped: the connection is gone`;
  return far;
}

/** The name of a field of the n-th clip, for the list of what is missing. */
export const fieldOf = (place: number, field: keyof SaidOfClip) => `clip-${place}-${field}`;

/** What is missing before the clips can be sent, by field; empty when nothing is. */
export function missingOf(
  clips: readonly SaidOfClip[],
  filmedOn: CalendarDay | null,
  filmedSpeed: FilmedSpeed | null,
): Record<string, string> {
  const missing: Record<string, string> = {};
  if (!filmedOn) missing.filmedOn = "Say on which day the clips were filmed.";
  if (!filmedSpeed) missing.filmedSpeed = "Say how fast they were filmed, or that you don't know.";
  for (const [index, clip] of clips.entries()) {
    const which = clips.length === 1 ? "" : `Clip ${index + 1}: `;
    if (!clip.view) missing[fieldOf(index, "view")] = `${which}Say where the camera stood.`;
    if (clip.pitchesThrown === null)
      missing[fieldOf(index, "pitchesThrown")] = `${which}Say how many pitches were thrown; 0 for dry work.`;
  }
  return missing;
}

/** What goes to the academy of a clip that is whole, or null when something is missing. */
export function sayingOf(
  clipId: string | null,
  { view, pitchesThrown, ...said }: SaidOfClip,
  filmedOn: CalendarDay | null,
): SendClipInput | null {
  if (!clipId || !view || pitchesThrown === null || !filmedOn) return null;
  return { ...said, clipId, view, pitchesThrown, filmedOn };
}
