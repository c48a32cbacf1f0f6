import {
  CONTACT_TO_RELEASE_MS,
  captureChoices,
  contactToReleaseMs,
  likelyCapturedFps,
  rateInWords,
} from "@/server/domain/clips/capture-rate";
import type { CaptureSource } from "@/server/domain/clips/clip";
import { fileFps } from "@/server/domain/clips/frame-rate";
import type { TimeBase } from "@/server/domain/clips/time-base";
import type { DeliveryEvent } from "@/server/domain/mechanics/delivery";

/** A rate a coach may choose for a clip, with what it would make of contact to release. */
export interface RateChoice {
  capturedFps: number;
  label: string;
  hint: string;
}

const SAYS: Record<CaptureSource, string> = {
  file: "by the file itself",
  sender: "by what the sender said",
  coach: "by a coach",
};

/** Rates that are offered whatever the marks say; others only where they are likely or set. */
const OFFERED: readonly number[] = [60, 120, 240, 480];

/** What a clip's times are worth, in a sentence. */
export function timeBaseInWords(base: TimeBase, source: CaptureSource | null): string {
  if (base.kind !== "true") return base.why;
  const says = source === null ? "" : `, ${SAYS[source]}`;
  return `Recorded at ${rateInWords(base.capturedFps)} frames a second${says}: ${slowness(base.stretch)}.`;
}

/** How much slower than life a stretched file plays. @example slowness(8) // "the file plays 8 times slower than life" */
function slowness(stretch: number): string {
  if (stretch === 1) return "the file plays as it happened";
  const times = (by: number) => String(Math.round(by * 100) / 100);
  return stretch > 1
    ? `the file plays ${times(stretch)} times slower than life`
    : `the file plays ${times(1 / stretch)} times faster than life`;
}

/**
 * The rates to choose from, slowest first: the file's own, the common ones above it, the one that contact to release
 * points to, and the one that is set.
 */
export function rateChoices(
  frameTimesMs: readonly number[],
  marks: Partial<Record<DeliveryEvent, number>>,
  setFps: number | null,
): RateChoice[] {
  const spots = { contact: marks.front_foot_contact, release: marks.ball_release };
  const likely = likelyCapturedFps(frameTimesMs, spots);
  const own = fileFps(frameTimesMs);
  const offered = captureChoices(frameTimesMs).filter(
    (fps) => fps === own || fps === likely || OFFERED.includes(fps),
  );
  const isSetOffered = setFps === null || offered.some((fps) => rateInWords(fps) === rateInWords(setFps));
  const all = isSetOffered ? offered : [...offered, setFps].sort((a, b) => a - b);
  return all.map((capturedFps) => ({
    capturedFps,
    label: `${rateInWords(capturedFps)} a second${capturedFps === own ? ", as the file plays" : ""}`,
    hint: checkInWords(contactToReleaseMs(frameTimesMs, spots, capturedFps), capturedFps === likely),
  }));
}

/** What a rate would make of contact to release; empty where it is not marked. */
export function checkInWords(ms: number | null, isLikely = false): string {
  if (ms === null) return "";
  return `contact to release would be ${seconds(ms)}${isLikely ? ": nearest to the published time" : ""}`;
}

/** What a rate is checked against, or what to mark so that it can be. */
export function checkSource(marks: Partial<Record<DeliveryEvent, number>>): string {
  const published = `about ${seconds(CONTACT_TO_RELEASE_MS)}`;
  const isMarked = marks.front_foot_contact !== undefined && marks.ball_release !== undefined;
  return isMarked
    ? `Published for pitchers: ${published} from contact to release (Seroyer et al. 2010). Pitchers differ, but by less than a step from one rate to the next.`
    : `Mark front foot contact and ball release on the clip first, and each rate is checked against the published time of ${published} from one to the other.`;
}

const seconds = (ms: number) => `${(ms / 1000).toFixed(3)} s`;
