import type { ClipPart } from "@/server/domain/clips/clip";
import { isPastRetention, retainUntil } from "@/server/domain/clips/send-clip";
import type { DeliveryEvent } from "@/server/domain/mechanics/delivery";
import { maySignIn } from "@/server/domain/people/person";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { type ClipParameters, clipParameters } from "../clips/clip-parameters";
import { CLIP_S, EVENT_TIMES_S } from "../clips/timeline";
import { eventFrames, frameCountOf } from "../clips/truth";
import type { Random } from "../seeded-random";
import { DEMO_SETTINGS } from "./place";
import { type Athlete, speakerFor } from "./roster";
import { dayIn, type Filming } from "./round-plan";
import { faultsOf, type Theme } from "./themes";
import type { World } from "./world";

/** A clip as a review needs it: where it was filmed from, and the frame of each event. */
export interface SeenClip {
  id: string;
  view: Filming["view"];
  frames: Record<DeliveryEvent, number>;
  pitchType: Filming["pitchType"];
  /** What is to be seen on it, whether or not its film is still there. */
  picture: SeenPicture;
}

/** The picture of a clip: what it shows, when the delivery begins on it, and how many frames there are. */
export interface SeenPicture {
  parameters: ClipParameters;
  startS: number;
  frameCount: number;
  isDrawn: boolean;
}

/** What is written of a clip beside its filming. */
export interface ClipPlace {
  athlete: Athlete;
  roundId: string;
  part: ClipPart;
  position: number;
  replaced?: boolean;
}

const DRAWN = { fps: 60, widthPx: 960, heightPx: 540 } as const;
const LIGHTS = ["chalk", "clay", "grass", "dusk", "ink"] as const;
const NOTES = [
  "From the fence, phone on the tripod.",
  "Third inning of throwing, felt loose.",
  "Tried the new cue on every one.",
  "Last ten of the bullpen.",
  "In the back yard, off flat ground.",
];

/**
 * Writes a clip. One that is still within the retention time is to be drawn, with the faults the athlete shows by now;
 * an older one has no film any more, but its frames are still known.
 */
export function writeClip(
  world: World,
  filming: Filming,
  place: ClipPlace,
  themes: readonly Theme[],
  random: Random,
): SeenClip {
  const { athlete, roundId, part, position } = place;
  const isDrawn = isKept(world, filming);
  const sender = speakerFor(athlete, filming.day);
  const sendsAlone = maySignIn(athlete.bornOn, filming.day) && random.chance(0.6);
  const film = isDrawn ? drawnFilm(world, filming, athlete, themes) : oldFilm(random);
  const { frames, startS, ...columns } = film;
  world.rows.clip.push({
    ...{ id: filming.clipId, athleteId: athlete.id, roundId, part, position, view: filming.view },
    ...{ pitchType: filming.pitchType, pitchesThrown: filming.pitches, alreadyOnLog: filming.alreadyOnLog },
    note: position === 0 && random.chance(0.4) ? random.pick(NOTES) : null,
    filmedOn: filming.day,
    uploadedByPersonId: sendsAlone ? athlete.personId : sender,
    createdAtMs: filming.sentInAtMs,
    retainUntil: keptUntil(world, filming),
    state: isDrawn ? "drawing" : place.replaced ? "replaced" : "expired",
    rotationDeg: 0,
    captureSource: "sender",
    ...columns,
  });
  const { capturedFps: fps, widthPx, heightPx, frameCount } = film;
  const shown = shownOn(filming, athlete, themes);
  const faults = isDrawn || position === 0 ? shown.faults : anotherDelivery(shown.faults, random);
  const parameters = { ...shown, faults, fps, widthPx, heightPx };
  return {
    ...{ id: filming.clipId, view: filming.view, frames, pitchType: filming.pitchType },
    picture: { parameters: clipParameters(parameters), startS, frameCount, isDrawn },
  };
}

/** Whether the film of a clip is still within the academy's retention time. */
export function isKept(world: World, filming: Filming): boolean {
  return !isPastRetention(keptUntil(world, filming), world.today);
}

function keptUntil(world: World, { sentInAtMs }: Filming): CalendarDay {
  return retainUntil(dayIn(world, sentInAtMs), DEMO_SETTINGS.clipRetentionDays);
}

/** A clip to be drawn: its length and frames are known beforehand, its file is named. */
function drawnFilm(world: World, filming: Filming, athlete: Athlete, themes: readonly Theme[]) {
  const { fps, widthPx, heightPx } = DRAWN;
  const storageName = world.fileName();
  const parameters = { ...shownOn(filming, athlete, themes), fps, widthPx, heightPx };
  world.demoClips.push({ clipId: filming.clipId, storageName, posterName: storageName, parameters });
  const frameCount = frameCountOf(fps);
  const size = { durationMs: CLIP_S * 1000, widthPx, heightPx, capturedFps: fps, frameCount };
  return { ...size, storageName, frames: eventFrames(fps), startS: 0 };
}

/** What a clip shows of an athlete: their body, their hand, and the faults that they have by now. */
function shownOn(filming: Filming, athlete: Athlete, themes: readonly Theme[]) {
  return {
    view: filming.view,
    throws: athlete.throws === "right" ? ("R" as const) : ("L" as const),
    ...{ ageYears: athlete.age, heightM: athlete.heightCm / 100, faults: faultsOf(themes) },
    light: LIGHTS[athlete.index % LIGHTS.length] ?? "chalk",
    kit: athlete.index,
  };
}

/** How much a fault differs from one delivery of a day to the next, at most. */
const DIFFERS = 0.1;

function anotherDelivery(faults: ClipParameters["faults"], random: Random): ClipParameters["faults"] {
  const pairs = Object.entries(faults).map(([fault, severity]) => {
    const another = severity + random.between(-DIFFERS, DIFFERS);
    return [fault, Math.min(1, Math.max(0, another))] as const;
  });
  return Object.fromEntries(pairs);
}

/** A clip whose film has been deleted: what it measured, and about where a delivery's events lay on it. */
function oldFilm(random: Random) {
  const fps = random.pick([30, 60, 60, 120, 240]);
  const startS = random.between(0.2, 1.6);
  const durationS = startS + CLIP_S + random.between(0.3, 1.5);
  const frames = Object.fromEntries(
    Object.entries(EVENT_TIMES_S).map(([event, timeS]) => [event, Math.ceil((startS + timeS) * fps)]),
  ) as Record<DeliveryEvent, number>;
  const frameCount = Math.floor(durationS * fps);
  const durationMs = Math.round((frameCount / fps) * 1000);
  return { durationMs, widthPx: 1920, heightPx: 1080, capturedFps: fps, frameCount, frames, startS };
}
