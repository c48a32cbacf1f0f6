import type { CameraView } from "@/server/domain/mechanics/delivery";
import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { openingsOn } from "@/server/domain/time/open-hours";
import type { Random } from "../seeded-random";
import type { Athlete } from "./roster";
import { RETAKE_REASONS } from "./round-history";
import {
  dayIn,
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

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

/** The round an athlete's part asks for: what stands in the queue, with a family, or was settled lately. */
export function planLately(world: World, athlete: Athlete, view: CameraView): RoundPlan | null {
  const random = athlete.random.fork("lately");
  const telling: Telling = { world, athlete, view, random };
  switch (athlete.part) {
    case "received_now":
      return received(telling, world.nowMs - 50 * MINUTE_MS, { twoViews: true });
    case "received_due_today":
      return received(telling, openDaysAgo(telling, 2, random.int(1020, 1200)));
    case "received_late":
      return received(telling, openDaysAgo(telling, 3, 1065));
    case "taken":
      return taken(telling, openDaysAgo(telling, 1, 1110), 4 * HOUR_MS, { twoViews: true });
    case "taken_draft":
      return { ...taken(telling, openDaysAgo(telling, 2, 1170), 75 * MINUTE_MS), hasDraft: true };
    case "answered_due_today":
      return answered(telling, openDaysAgo(telling, 2, 1130));
    case "answered":
      return answered(telling, openDaysAgo(telling, 1, 1150));
    case "retake":
      return askedAgain(telling);
    case "sent":
      return sent(telling, random.int(5, 8));
    case "settled_lately":
      return settled(telling);
    case "lapsed":
      return lapsed(telling);
    case "withdrawn":
      return withdrawn(telling);
    default:
      return null;
  }
}

interface Views {
  twoViews?: boolean;
}

interface Telling {
  world: World;
  athlete: Athlete;
  view: CameraView;
  random: Random;
}

const nothingYet = (athlete: Athlete) => ({
  ...{ athlete, takenAtMs: null, review: null, reply: [], retake: null, check: null },
  ...{ endedAtMs: null, handedOverBy: null, hasDraft: false },
});

/**
 * A moment some openings ago, within the hour at the latest. Once the site has closed today the next opening counts as
 * today's, so that what is due next is never late already.
 */
function openDaysAgo({ world, athlete }: Telling, count: number, minute: number): number {
  const hours = hoursOf(world, athlete);
  const openings = openingsOn(hours, world.today);
  const isOver = openings.length > 0 && openings.every(({ endMs }) => endMs <= world.nowMs);
  const day = openDaysFrom(hours, isOver ? openDaysFrom(hours, world.today, 1) : world.today, -count);
  return Math.min(at(world, day, minute), world.nowMs - 55 * MINUTE_MS);
}

function clipOf({ world, athlete, view, random }: Telling, sentInAtMs: number): Filming {
  return film(world, athlete, { day: dayIn(world, sentInAtMs), sentInAtMs, view }, random);
}

/** The same pitches from another side. */
function secondView({ world }: Telling, filming: Filming): Filming {
  return filmAgain(world, filming, filming.view === "front" ? "open_side" : "front");
}

function received(telling: Telling, sentInAtMs: number, { twoViews = false }: Views = {}): RoundPlan {
  const first = clipOf(telling, sentInAtMs);
  const second = twoViews ? [secondView(telling, first)] : [];
  return { ...nothingYet(telling.athlete), outcome: "received", first: [first, ...second] };
}

function taken(telling: Telling, sentInAtMs: number, agoMs: number, views: Views = {}): RoundPlan {
  const takenAtMs = Math.max(telling.world.nowMs - agoMs, sentInAtMs + 5 * MINUTE_MS);
  return { ...received(telling, sentInAtMs, views), outcome: "taken", takenAtMs };
}

function askedAgain(telling: Telling): RoundPlan {
  const sentInAtMs = openDaysAgo(telling, 2, 1080);
  const askedAtMs = Math.max(telling.world.nowMs - 20 * HOUR_MS, sentInAtMs + HOUR_MS);
  const plan = received(telling, sentInAtMs);
  const [unusable] = plan.first;
  if (!unusable) throw new RangeError("A round without a clip.");
  const takenAtMs = askedAtMs - 6 * MINUTE_MS;
  const retake = { askedAtMs, takenAtMs, unusable, reason: RETAKE_REASONS[1] };
  return { ...plan, outcome: "retake", first: [], retake };
}

/** Received some days ago and sent one or two openings later, within the promise. */
function sent(telling: Telling, receivedDaysAgo: number, views: Views = {}): RoundPlan {
  const { world, athlete, random } = telling;
  const receivedOn = dayFromToday(world, -receivedDaysAgo);
  const plan = received(telling, at(world, receivedOn, random.int(1000, 1200)), views);
  const sentOn = openDaysFrom(hoursOf(world, athlete), receivedOn, random.int(1, 2));
  const afterMs = plan.first[0]?.sentInAtMs ?? 0;
  return { ...plan, outcome: "sent", review: planReview(world, athlete, { sentOn, afterMs }, random) };
}

function answered(telling: Telling, answeredAtMs: number): RoundPlan {
  const { world, random } = telling;
  const daysAgo = daysSince(world, answeredAtMs);
  const plan = sent(telling, daysAgo + random.int(9, 10));
  return { ...plan, outcome: "answered", reply: [clipOf(telling, answeredAtMs)] };
}

function settled(telling: Telling): RoundPlan {
  const { world, athlete, random } = telling;
  const answeredAtMs = at(world, dayFromToday(world, -8), 1110);
  const plan = sent(telling, 19, { twoViews: true });
  const reply = clipOf(telling, answeredAtMs);
  const settledOn = openDaysFrom(hoursOf(world, athlete), dayFromToday(world, -8), 1);
  const check = planCheck(world, athlete, { settledOn, afterMs: answeredAtMs }, random);
  return { ...plan, outcome: "settled", reply: [reply, secondView(telling, reply)], check };
}

function lapsed(telling: Telling): RoundPlan {
  const { world } = telling;
  const plan = sent(telling, 24);
  const lapsesOn = plan.review?.lapsesOn ?? world.today;
  return { ...plan, outcome: "lapsed", endedAtMs: at(world, lapsesOn, 180) };
}

function withdrawn(telling: Telling): RoundPlan {
  const { world } = telling;
  const plan = received(telling, at(world, dayFromToday(world, -5), 1140));
  return { ...plan, outcome: "withdrawn", endedAtMs: at(world, dayFromToday(world, -4), 540) };
}

function daysSince(world: World, instantMs: number): number {
  let days = 0;
  while (dayFromToday(world, -days) > dayIn(world, instantMs)) days += 1;
  return days;
}

/** The day before which the season's rounds must have ended so that the latest follows them. */
export function dayBefore(plan: RoundPlan | null, world: World): CalendarDay {
  const first = plan?.first[0] ?? plan?.retake?.unusable;
  return first ? addDays(first.day, -6) : world.today;
}
