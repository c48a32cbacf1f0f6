import type { CameraView } from "@/server/domain/mechanics/delivery";
import { addDays, type CalendarDay, daysBetween } from "@/server/domain/time/calendar-day";
import { firstOpenDay } from "@/server/domain/time/open-hours";
import type { Random } from "../seeded-random";
import { roomOn } from "./arm";
import { SILENT_DAYS } from "./pain";
import { DEMO_SETTINGS } from "./place";
import { type Athlete, isForYears } from "./roster";
import {
  type Filming,
  film,
  filmAgain,
  hoursOf,
  openDaysFrom,
  planCheck,
  planReview,
  type RoundPlan,
} from "./round-plan";
import { at, dayFromToday, type World } from "./world";

/** Why a clip could not be used. */
export const RETAKE_REASONS = [
  "The camera moves with the pitch. Please put the phone on a tripod or lean it on a bag.",
  "The front foot is cut off at landing. Please stand two steps further back.",
  "Too dark to see the hands. Please film once more with the light behind the camera.",
] as const;

/** Deliveries of one day that are sent by who has been filmed for years: enough to tell how they differ. */
const DELIVERIES = 3;

/** Days between the end of a round and the next clip. */
const PAUSE_DAYS = { usual: [16, 40], keen: [10, 16], forYears: [4, 9] } as const;

/**
 * The rounds behind, up to the day before clips are still kept, one after the other, none open at the end.
 * @param untilDay no clip comes in after it
 */
export function planHistory(
  world: World,
  athlete: Athlete,
  view: CameraView,
  untilDay: CalendarDay,
): RoundPlan[] {
  if (athlete.part === "no_consent") return [];
  const random = athlete.random.fork("rounds");
  const last = earliest([
    untilDay,
    dayFromToday(world, -DEMO_SETTINGS.clipRetentionDays - 1),
    ...(athlete.part === "silent" ? [dayFromToday(world, -SILENT_DAYS - 2)] : []),
  ]);
  const start = latest(dayFromToday(world, -athlete.historyDays), addDays(athlete.joinedOn, 4));
  const plans: RoundPlan[] = [];
  let day = addDays(start, random.int(1, 24));
  while (daysBetween(day, last) >= 14) {
    const { plan, endedOn } = planOne(world, athlete, { view, day, last }, random);
    plans.push(plan);
    day = addDays(endedOn, random.int(...pauseOf(athlete)));
  }
  return plans;
}

function pauseOf(athlete: Athlete): readonly [number, number] {
  if (isForYears(athlete)) return PAUSE_DAYS.forYears;
  return athlete.keenness > 0.85 ? PAUSE_DAYS.keen : PAUSE_DAYS.usual;
}

/** The pitch that a clip shows, and of who has been filmed for years the next ones of that day. */
function deliveries(world: World, athlete: Athlete, filming: Filming): Filming[] {
  const others = isForYears(athlete) ? DELIVERIES - 1 : 0;
  return [filming, ...Array.from({ length: others }, () => filmAgain(world, filming, filming.view))];
}

interface Frame {
  view: CameraView;
  day: CalendarDay;
  last: CalendarDay;
}

function planOne(world: World, athlete: Athlete, { view, day, last }: Frame, random: Random) {
  const hours = hoursOf(world, athlete);
  const evening = (on: CalendarDay) => at(world, on, random.int(960, 1300));
  const clip = (on: CalendarDay) => film(world, athlete, { day: on, sentInAtMs: evening(on), view }, random);
  const fate = random.next();
  const empty = { athlete, takenAtMs: null, reply: [], retake: null, check: null, endedAtMs: null };
  const handedOverBy = random.chance(0.05) ? otherCoach(world, athlete) : null;
  const base: Omit<RoundPlan, "outcome" | "first" | "review"> = { ...empty, handedOverBy, hasDraft: false };
  const filmed = clip(day);
  if (fate < 0.03) {
    const endedAtMs = filmed.sentInAtMs + random.int(2, 14) * 3_600_000;
    const plan: RoundPlan = { ...base, outcome: "withdrawn", first: [filmed], review: null, endedAtMs };
    return { plan, endedOn: addDays(day, 1) };
  }
  const retaken = fate < 0.07 ? retake(world, athlete, { filmed, view }, random) : null;
  const first = retaken?.first ?? filmed;
  const workDays = random.next() < 0.62 ? 1 : random.chance(0.92) ? 2 : 3;
  const sentOn = openDaysFrom(hours, first.day, workDays);
  const review = planReview(world, athlete, { sentOn, afterMs: first.sentInAtMs }, random);
  const withReview = {
    ...base,
    first: deliveries(world, athlete, first),
    review,
    retake: retaken?.retake ?? null,
  };
  const replyOn = fate > 0.93 ? null : replyDay(athlete, review, last, random);
  if (replyOn === null) {
    const endedAtMs = at(world, review.lapsesOn, 180);
    return {
      plan: { ...withReview, outcome: "lapsed", endedAtMs } satisfies RoundPlan,
      endedOn: review.lapsesOn,
    };
  }
  const reply = clip(replyOn);
  const settledOn = openDaysFrom(
    hours,
    firstOpenDay(hours, addDays(replyOn, 1)) ?? replyOn,
    random.int(0, 1),
  );
  const check = planCheck(world, athlete, { settledOn, afterMs: reply.sentInAtMs }, random);
  const plan: RoundPlan = { ...withReview, outcome: "settled", reply: [reply], check };
  return { plan, endedOn: settledOn };
}

/** The first clip could not be used; another came two days later. */
function retake(
  world: World,
  athlete: Athlete,
  { filmed, view }: { filmed: Filming; view: CameraView },
  random: Random,
) {
  const day = addDays(filmed.day, 2);
  const first = film(
    world,
    athlete,
    { day, sentInAtMs: at(world, day, random.int(960, 1300)), view },
    random,
  );
  const takenAtMs = at(world, addDays(filmed.day, 1), 900);
  const askedAtMs = takenAtMs + random.int(3, 9) * 60_000;
  return { first, retake: { takenAtMs, askedAtMs, unusable: filmed, reason: random.pick(RETAKE_REASONS) } };
}

/** A day within the reply's window on which the arm has room for a few pitches; null when there is none by `last`. */
function replyDay(
  athlete: Athlete,
  review: { replyFrom: CalendarDay; lapsesOn: CalendarDay },
  last: CalendarDay,
  random: Random,
): CalendarDay | null {
  const wished = addDays(review.replyFrom, random.int(4, 8));
  for (let day = wished; day < review.lapsesOn && day <= last; day = addDays(day, 1)) {
    if (roomOn(athlete.arm, day) >= 6) return day;
  }
  return null;
}

/** The owner looks in when a coach has too much, and hands on what is not theirs. */
function otherCoach(world: World, { coachId }: Athlete): string {
  const { dell, ines } = world.staffIds;
  return coachId === dell ? ines : dell;
}

const earliest = (days: readonly CalendarDay[]): CalendarDay => [...days].sort()[0] ?? "";
const latest = (one: CalendarDay, other: CalendarDay): CalendarDay => {
  if (one > other) return one;
  return other;
};
