import type { ThrowKind } from "@/server/domain/throwing/throw-entry";
import { type GameDetails, NO_GAME } from "@/server/domain/throwing/validate-game";
import { addDays, type CalendarDay, weekdayOf } from "@/server/domain/time/calendar-day";
import { roomOn } from "./arm";
import { type Athlete, speakerFor } from "./roster";
import { gameSaid } from "./teams";
import { at, dayFromToday, type World } from "./world";

/** One line of the throw log. */
export interface Throws {
  day: CalendarDay;
  kind: ThrowKind;
  pitches: number;
  reportedBy: string;
  reportedAtMs: number;
  sessionId?: string;
  clipId?: string;
  game?: Partial<GameDetails>;
}

/** Lays throws on the arm and writes them into the log. */
export function logThrows(world: World, { id: athleteId, arm }: Athlete, throws: Throws): void {
  const {
    day: thrownOn,
    kind,
    pitches,
    reportedAtMs,
    reportedBy,
    sessionId = null,
    clipId = null,
    game,
  } = throws;
  const id = world.id("thr");
  arm.entries.push({
    ...NO_GAME,
    ...game,
    id,
    athleteId,
    thrownOn,
    kind,
    pitches,
    replacesId: null,
    reportedAtMs,
  });
  const row = { ...game, id, athleteId, thrownOn, kind, pitches, sessionId, clipId, reportedAtMs };
  world.rows.throwEntry.push({ ...row, reportedByPersonId: reportedBy });
}

/** Months in which games are played outdoors, April to October. */
const isSeason = (day: CalendarDay) => day.slice(5, 7) >= "04" && day.slice(5, 7) <= "10";

/** The share of days of this kind with a game: weekends in the season, a showcase now and then outside it. */
function gameShare(day: CalendarDay): number {
  if (weekdayOf(day) < 6) return 0;
  return isSeason(day) ? 0.36 : 0.05;
}

/** The weekends behind: games with a count that the book leaves room for. */
export function buildGames(world: World, athlete: Athlete): void {
  const random = athlete.random.fork("games");
  const telling = athlete.random.fork("what games say");
  for (let days = -athlete.historyDays; days < -1; days += 1) {
    const day = dayFromToday(world, days);
    if (day < athlete.joinedOn || !random.chance(gameShare(day))) continue;
    const pitches = Math.min(roomOn(athlete.arm, day), random.int(18, 30 + 4 * athlete.age));
    if (pitches < 12) continue;
    const kind = isSeason(day) ? "game" : "showcase";
    logThrows(world, athlete, {
      day,
      kind,
      pitches,
      game: gameSaid(telling, pitches, kind === "game" ? athlete.teamId : null),
      ...reportOf(world, athlete, day, random.int(1140, 1290)),
    });
  }
}

/** Easy throws between sessions: they say that somebody keeps the log, and count toward nothing. */
export function buildEasyThrows(world: World, athlete: Athlete, untilDays: number): void {
  const random = athlete.random.fork("easy throws");
  let days = -athlete.historyDays + random.int(0, 6);
  while (days <= untilDays) {
    const day = dayFromToday(world, days);
    if (day >= athlete.joinedOn && !athlete.arm.blocked.some(({ from, to }) => from <= day && day <= to)) {
      const kind = athlete.age >= 15 && random.chance(0.4) ? "long_toss" : "flat_ground";
      const throws = { day, kind, pitches: random.int(4, 9) * 5 } as const;
      logThrows(world, athlete, { ...throws, ...reportOf(world, athlete, day, random.int(1080, 1260)) });
    }
    days += random.int(5, 11);
  }
}

/** The latest easy throws of an arm, a few days ago at most, so that silence is the exception. */
export function buildLatestThrows(world: World, athlete: Athlete): void {
  const random = athlete.random.fork("latest throws");
  const day = dayFromToday(world, -random.int(1, 4));
  if (athlete.arm.blocked.some(({ from, to }) => from <= day && day <= to)) return;
  const throws = { day, kind: "flat_ground", pitches: random.int(3, 8) * 5 } as const;
  logThrows(world, athlete, { ...throws, ...reportOf(world, athlete, day, random.int(1080, 1260)) });
}

/** Outings that are coming: some arms pitch at the weekend. They are laid down before sessions are booked around them. */
export function buildPlannedOutings(world: World, athlete: Athlete): void {
  const random = athlete.random.fork("outings");
  const isFree = athlete.part === null || athlete.part === "sent" || athlete.part === "settled_lately";
  if (!isFree || !random.chance(0.3)) return;
  const day = nextSaturday(world, random.chance(0.5) ? 7 : 0);
  const pitches = Math.min(25 + 2 * athlete.age, roomOn(athlete.arm, day));
  if (pitches < 15) return;
  const id = world.id("out");
  athlete.arm.planned.push({ id, plannedOn: day, kind: "game", pitches, teamId: athlete.teamId });
  world.rows.plannedOuting.push({
    ...{ id, athleteId: athlete.id, plannedOn: day, pitches, teamId: athlete.teamId },
    addedByPersonId: speakerFor(athlete, world.today),
    addedAtMs: at(world, dayFromToday(world, -random.int(2, 6)), 1215),
  });
}

function nextSaturday(world: World, moreDays: number): CalendarDay {
  const ahead = (6 - weekdayOf(world.today) + 7) % 7 || 7;
  return addDays(world.today, ahead + moreDays);
}

function reportOf(world: World, athlete: Athlete, day: CalendarDay, minute: number) {
  return {
    reportedBy: speakerFor(athlete, day),
    reportedAtMs: Math.min(at(world, day, minute), world.nowMs - 60_000),
  };
}
