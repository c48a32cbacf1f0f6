import type { SessionKind } from "@/server/domain/calendar/session-kind";
import { type CalendarDay, weekdayOf } from "@/server/domain/time/calendar-day";
import { type Diary, worksOn } from "./diary";
import type { Athlete } from "./roster";
import type { SessionTale } from "./session-rows";
import { bookOne } from "./sessions";
import { at, dayFromToday } from "./world";

/** How many athletes of each coach come in today. The first coach's day is the fullest. */
const COMING_TODAY = { tamar: 6, ines: 4, ruben: 4, dell: 3 } as const;

/** What is wished for in turn, in minutes since midnight, so that a day fills from first to last light. */
const WISHED: readonly { kind: SessionKind; wishedMin: number }[] = [
  { kind: "lesson", wishedMin: 1110 },
  { kind: "bullpen", wishedMin: 780 },
  { kind: "lesson", wishedMin: 960 },
  { kind: "dry_work", wishedMin: 1170 },
  { kind: "bullpen", wishedMin: 870 },
  { kind: "assessment", wishedMin: 1035 },
];

/**
 * The sessions that the demo cannot do without, before any other: those of today, the one that a late game takes the
 * room from, and the one of an arm that has been stopped since.
 */
export function buildToday(diary: Diary, athletes: readonly Athlete[], done: SessionTale[]): void {
  const { world } = diary;
  for (const athlete of athletes) bookForPart(diary, athlete, done);
  for (const [key, wanted] of Object.entries(COMING_TODAY)) {
    const coachId = world.staffIds[key as keyof typeof COMING_TODAY];
    const own = athletes.filter((athlete) => athlete.coachId === coachId && mayComeToday(athlete));
    fillDay(diary, world.random.fork(`today ${key}`).shuffled(own), wanted, done);
  }
}

/** Books the athletes in turn until as many as wanted come in today. */
function fillDay(diary: Diary, athletes: readonly Athlete[], wanted: number, done: SessionTale[]): void {
  let booked = 0;
  for (const athlete of athletes) {
    if (booked >= wanted) return;
    const { kind, wishedMin } = WISHED[booked % WISHED.length] ?? {};
    const fixed = { isSure: true, ...(kind ? { kind } : {}), ...(wishedMin ? { wishedMin } : {}) };
    const tale = bookOne(diary, athlete, [diary.world.today], athlete.random.fork("today"), fixed);
    if (tale) done.push(tale);
    if (tale) booked += 1;
  }
}

const mayComeToday = ({ part }: Athlete) =>
  part !== "silent" && part !== "late_game" && part !== "pain_stopped" && part !== "received_now";

/** Sessions booked before something came between: each is within the book but for what came later. */
function bookForPart(diary: Diary, athlete: Athlete, done: SessionTale[]): void {
  const { world } = diary;
  const random = athlete.random.fork("booked before");
  const blocked = athlete.arm.blocked.splice(0);
  const push = (tale: SessionTale | null) => tale && done.push(tale);
  if (athlete.part === "late_game") {
    const days = soonestWorked(diary, athlete, 1);
    push(bookOne(diary, athlete, days, random, { kind: "bullpen", isSure: true, bookedDaysBefore: 6 }));
  }
  if (athlete.part === "pain_stopped") {
    const days = soonestWorked(diary, athlete, 3);
    push(bookOne(diary, athlete, days, random, { kind: "lesson", isSure: true, bookedDaysBefore: 9 }));
  }
  if (athlete.part === "silent") {
    const fixed = { kind: "lesson", state: "booked", wishedMin: 1200, bookedDaysBefore: 5 } as const;
    const isOver = at(world, world.today, weekdayOf(world.today) >= 6 ? 720 : 1080) <= world.nowMs;
    const days = isOver ? soonestWorked(diary, athlete, 1) : [world.today];
    push(bookOne(diary, athlete, days, random, fixed));
  }
  athlete.arm.blocked.push(...blocked);
}

function soonestWorked(diary: Diary, athlete: Athlete, fromDays: number): CalendarDay[] {
  const ahead = Array.from({ length: 10 }, (_, index) => dayFromToday(diary.world, fromDays + index));
  return ahead.filter((day) => worksOn(diary, athlete.coachId, day)).slice(0, 1);
}
