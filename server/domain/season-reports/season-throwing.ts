import { inningsInWords } from "@/server/domain/throwing/innings";
import { monthsOffInWords } from "@/server/domain/throwing/load-in-words";
import { monthsOffBetween } from "@/server/domain/throwing/load-months-off";
import { pitchedBetween } from "@/server/domain/throwing/load-year";
import { currentEntries, type ThrowEntry } from "@/server/domain/throwing/throw-entry";
import {
  isOutingKind,
  THROW_GROUPS,
  throwsByWeek,
  type WeekOfThrows,
} from "@/server/domain/throwing/throws-by-week";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { knownUntil, type SeasonSpan } from "./season-span";

/** What was thrown in one calendar month, as far as it lies in the span. */
export interface MonthOfThrows {
  /** Such as "2026-11". */
  month: string;
  throws: number;
  /** Games, live at-bats and showcases, and the pitches of them. */
  outings: number;
  outingPitches: number;
}

/** What was thrown in a season: figures, and sentences without a verdict. */
export interface SeasonThrowing {
  weeks: WeekOfThrows[];
  months: MonthOfThrows[];
  words: string[];
}

/**
 * The throwing of a span up to today, by weeks and by months, as far as it was logged.
 * @param entries the athlete's whole log, so that a month before the log began is not taken for a month off
 */
export function seasonThrowing(
  entries: readonly ThrowEntry[],
  span: SeasonSpan,
  today: CalendarDay,
): SeasonThrowing {
  const untilOn = knownUntil(span, today);
  const known = currentEntries(entries);
  const thrown = known.filter(
    ({ thrownOn, pitches }) => thrownOn >= span.fromOn && thrownOn <= untilOn && pitches > 0,
  );
  return {
    weeks: throwsByWeek(thrown, span.fromOn, untilOn),
    months: monthsBetween(span.fromOn, untilOn).map((month) => monthOf(month, thrown)),
    words:
      thrown.length === 0
        ? ["Nothing was logged in this time."]
        : [
            ...pitchesInWords(thrown, span.fromOn, untilOn),
            ...outingsInWords(thrown.filter(({ kind }) => isOutingKind(kind))),
            ...monthsOffInWords(monthsOffBetween(known, span.fromOn, untilOn)),
          ],
  };
}

/** All that was thrown in a week, whatever it was. */
export function throwsOf({ counts }: Pick<WeekOfThrows, "counts">): number {
  return THROW_GROUPS.reduce((sum, group) => sum + counts[group], 0);
}

function monthOf(month: string, thrown: readonly ThrowEntry[]): MonthOfThrows {
  const own = thrown.filter(({ thrownOn }) => thrownOn.startsWith(month));
  const outings = own.filter(({ kind }) => isOutingKind(kind));
  return { month, throws: pitchesIn(own), outings: outings.length, outingPitches: pitchesIn(outings) };
}

function monthsBetween(fromOn: CalendarDay, untilOn: CalendarDay): string[] {
  const months: string[] = [];
  let [year = 0, month = 1] = fromOn.split("-").map(Number);
  for (let name = fromOn.slice(0, 7); name <= untilOn.slice(0, 7); ) {
    months.push(name);
    [year, month] = month === 12 ? [year + 1, 1] : [year, month + 1];
    name = `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}`;
  }
  return months;
}

function pitchesInWords(thrown: readonly ThrowEntry[], fromOn: CalendarDay, untilOn: CalendarDay): string[] {
  const { moundPitches, outs, gamesWithoutOuts } = pitchedBetween(thrown, fromOn, untilOn);
  const innings = outs === 0 ? "" : ` Innings pitched: ${inningsInWords(outs)}.`;
  const without =
    gamesWithoutOuts === 0 ? "" : ` Of ${counted(gamesWithoutOuts, "game")} no innings are on the log.`;
  return [`${pitchesIn(thrown)} throws, ${moundPitches} of them pitches off a mound.${innings}${without}`];
}

function outingsInWords(outings: readonly ThrowEntry[]): string[] {
  const byDay = new Map<CalendarDay, number>();
  for (const { thrownOn, pitches } of outings) byDay.set(thrownOn, (byDay.get(thrownOn) ?? 0) + pitches);
  const [most] = [...byDay].sort(([, one], [, other]) => other - one);
  if (most === undefined) return ["No game, live at-bats or showcase."];
  const [day, pitches] = most;
  const inAll = `${counted(outings.length, "outing")} (games, live at-bats, showcases), ${pitchesIn(outings)} pitches`;
  return [`${inAll}; the most on one day were ${pitches}, on ${dayInWords(day, { withYear: true })}.`];
}

const pitchesIn = (entries: readonly ThrowEntry[]) => entries.reduce((sum, { pitches }) => sum + pitches, 0);
const counted = (count: number, noun: string) => `${count} ${noun}${count === 1 ? "" : "s"}`;
