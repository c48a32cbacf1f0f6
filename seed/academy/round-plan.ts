import type { PitchType } from "@/server/domain/clips/clip";
import type { CameraView } from "@/server/domain/mechanics/delivery";
import { dueAtMs } from "@/server/domain/reviews/promise";
import { replyWindow } from "@/server/domain/reviews/reply-window";
import type { RoundState } from "@/server/domain/reviews/round-state";
import { addDays, type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";
import { firstOpenDay, type OpenHours, openingsOn } from "@/server/domain/time/open-hours";
import type { Random } from "../seeded-random";
import { freeFrom, roomOn, thrownOn } from "./arm";
import { DEMO_SETTINGS } from "./place";
import { type Athlete, speakerFor } from "./roster";
import { logThrows } from "./throws";
import type { World } from "./world";

/** A clip as it was filmed: the day, what it cost the arm, and whether that is in an outing on the log. */
export interface Filming {
  clipId: string;
  view: CameraView;
  day: CalendarDay;
  sentInAtMs: number;
  pitches: number;
  alreadyOnLog: boolean;
  pitchType: PitchType | null;
}

/** The review of a round: when it was taken, opened and sent, and until when a reply is asked for. */
export interface PlannedReview {
  takenAtMs: number;
  openedAtMs: number;
  sentAtMs: number;
  replyFrom: CalendarDay;
  lapsesOn: CalendarDay;
}

/** The check of a reply. */
export interface PlannedCheck {
  openedAtMs: number;
  settledAtMs: number;
}

/** Everything that happens in one round, and when. What is null has not happened. */
export interface RoundPlan {
  athlete: Athlete;
  outcome: RoundState;
  first: Filming[];
  /** A clip that could not be used, and the word on it; `first` came instead, or is it still. */
  retake: { askedAtMs: number; takenAtMs: number; unusable: Filming; reason: string } | null;
  /** Set when a coach has it and no review is out yet. */
  takenAtMs: number | null;
  review: PlannedReview | null;
  reply: Filming[];
  check: PlannedCheck | null;
  /** When it was withdrawn or lapsed. */
  endedAtMs: number | null;
  /** The coach who took it first and handed it on. */
  handedOverBy: string | null;
  hasDraft: boolean;
}

const PROMISE = { kind: DEMO_SETTINGS.promiseKind, amount: DEMO_SETTINGS.promiseAmount };

/** The open hours of the athlete's site. */
export function hoursOf(world: World, { siteId }: Athlete): OpenHours {
  const hours = world.siteHours.get(siteId);
  if (!hours) throw new RangeError("The athlete has no site.");
  return hours;
}

/** When the academy owes the next step after an instant, by its promise. */
export function owedAtMs(world: World, athlete: Athlete, fromMs: number): number {
  const due = dueAtMs(PROMISE, hoursOf(world, athlete), fromMs);
  if (due === null) throw new RangeError("The site never opens.");
  return due;
}

/** The day of the `count`-th opening before (negative) or after a day; 0 is the day itself. */
export function openDaysFrom(hours: OpenHours, day: CalendarDay, count: number): CalendarDay {
  let found = day;
  for (let left = Math.abs(count); left > 0; ) {
    found = addDays(found, Math.sign(count));
    if (firstOpenDay(hours, found) === found) left -= 1;
  }
  return found;
}

/** A clip filmed on a day: within what the book leaves the arm, on an outing's throws, or without a ball. */
export function film(
  world: World,
  athlete: Athlete,
  clip: { day: CalendarDay; sentInAtMs: number; view: CameraView },
  random: Random,
): Filming {
  const clipId = world.id("clp");
  const onLog = thrownOn(athlete.arm, clip.day);
  const base = { ...clip, clipId, pitchType: random.chance(0.8) ? ("fastball" as const) : null };
  if (onLog >= 8) return { ...base, pitches: random.int(6, 8), alreadyOnLog: true };
  const pitches = Math.min(roomOn(athlete.arm, clip.day), random.int(6, 14));
  if (pitches < 4) return { ...base, pitches: 0, alreadyOnLog: false };
  const reportedBy = speakerFor(athlete, clip.day);
  const throws = { day: clip.day, kind: "bullpen", pitches, clipId, reportedBy } as const;
  logThrows(world, athlete, { ...throws, reportedAtMs: clip.sentInAtMs });
  return { ...base, pitches, alreadyOnLog: false };
}

/** Another pitch of the same ones, or a second camera on them. */
export function filmAgain(world: World, filming: Filming, view: CameraView): Filming {
  return { ...filming, clipId: world.id("clp"), view, pitches: 0, alreadyOnLog: false };
}

/** A review sent on a day while the site is open, with the reply it asks for. */
export function planReview(
  world: World,
  athlete: Athlete,
  { sentOn, afterMs }: { sentOn: CalendarDay; afterMs: number },
  random: Random,
): PlannedReview {
  const sentAtMs = workMoment(hoursOf(world, athlete), sentOn, random);
  const openedAtMs = Math.max(sentAtMs - random.int(14, 32) * 60_000, afterMs + 120_000);
  const takenAtMs = Math.max(openedAtMs - random.int(1, 180) * 60_000, afterMs + 60_000);
  return { takenAtMs, openedAtMs, sentAtMs, ...clipAskedFor(athlete, sentOn) };
}

/** From when and until when a clip is asked for that is asked for on a day. */
export function clipAskedFor(
  athlete: Athlete,
  sentOn: CalendarDay,
): { replyFrom: CalendarDay; lapsesOn: CalendarDay } {
  const armFreeOn = freeFrom(athlete.arm, sentOn);
  const window = replyWindow({ sentOn, spanDays: DEMO_SETTINGS.replySpanDays, armFreeOn });
  const { replyFrom, lapsesOn } = window;
  if (replyFrom === null || lapsesOn === null) throw new RangeError("The arm is never free.");
  return { replyFrom, lapsesOn };
}

/** A check done on a day while the site is open. */
export function planCheck(
  world: World,
  athlete: Athlete,
  { settledOn, afterMs }: { settledOn: CalendarDay; afterMs: number },
  random: Random,
): PlannedCheck {
  const settledAtMs = workMoment(hoursOf(world, athlete), settledOn, random);
  return { settledAtMs, openedAtMs: Math.max(settledAtMs - random.int(7, 16) * 60_000, afterMs + 60_000) };
}

/** The day of an instant by the sites' clock. */
export const dayIn = (world: World, instantMs: number): CalendarDay => dayOf(instantMs, world.zone);

/** A moment in the second half of a day's opening, so that whatever came in the morning lies before it. */
function workMoment(hours: OpenHours, day: CalendarDay, random: Random): number {
  const [opening] = openingsOn(hours, day);
  if (!opening) throw new RangeError(`The site is closed on ${day}.`);
  const { startMs, endMs } = opening;
  const share = random.between(0.35, 0.9);
  return startMs + Math.round(((endMs - startMs) * share) / 60_000) * 60_000;
}
