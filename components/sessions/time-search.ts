import {
  MAX_SESSION_MIN,
  MIN_SESSION_MIN,
  SESSION_KIND,
  SESSION_KINDS,
  type SessionKind,
} from "@/server/domain/calendar/session-kind";
import { type CalendarDay, isCalendarDay } from "@/server/domain/time/calendar-day";

/** Parts of a day that a family may wish for, by the site's wall clock; the hours are common practice, no source. */
export const DAY_PARTS = {
  any: { label: "Any time", fromMin: 0, toMin: 1440 },
  morning: { label: "Before noon", fromMin: 0, toMin: 720 },
  afternoon: { label: "Noon to 18:00", fromMin: 720, toMin: 1080 },
  evening: { label: "After 18:00", fromMin: 1080, toMin: 1440 },
} as const;

/** One of {@link DAY_PARTS}. */
export type DayPart = keyof typeof DAY_PARTS;

/** What is looked for, as it stands in the address of a page. */
export interface TimeSearch {
  athleteIds: readonly string[];
  kind: SessionKind;
  durationMin: number;
  plannedPitches: number;
  fromDay: CalendarDay;
  toDay: CalendarDay;
  coachPersonId: string | null;
  siteId: string | null;
  /** ISO weekdays that are wished for; none means any. */
  weekdays: readonly number[];
  dayPart: DayPart;
  roundId: string | null;
  moveSessionId: string | null;
}

/** The parameters of an address as a page gets them. */
export type AddressParams = Readonly<Record<string, string | string[] | undefined>>;

/** Reads a search from an address; what is missing or makes no sense is as in `defaults`. */
export function readTimeSearch(params: AddressParams, defaults: TimeSearch): TimeSearch {
  return {
    athleteIds: defaults.athleteIds,
    ...readSession(params, defaults),
    ...readDays(params, defaults),
    coachPersonId: choiceIn(params, "coach", defaults.coachPersonId),
    siteId: choiceIn(params, "site", defaults.siteId),
    weekdays: weekdaysIn(params),
    dayPart: dayPartIn(params) ?? defaults.dayPart,
    roundId: text(params, "round") ?? defaults.roundId,
    moveSessionId: text(params, "move") ?? defaults.moveSessionId,
  };
}

/** Another kind than the default's comes with the length and the pitches of its own. */
function readSession(params: AddressParams, defaults: TimeSearch) {
  const kind = SESSION_KINDS.find((each) => each === text(params, "kind")) ?? defaults.kind;
  const facts = kind === defaults.kind ? defaults : SESSION_KIND[kind];
  const pitches = within(params, "pitches", 0, 400) ?? facts.plannedPitches;
  return {
    kind,
    durationMin: within(params, "minutes", MIN_SESSION_MIN, MAX_SESSION_MIN) ?? facts.durationMin,
    plannedPitches: SESSION_KIND[kind].throwsOnMound ? pitches : 0,
  };
}

function readDays(params: AddressParams, defaults: TimeSearch) {
  const fromDay = dayIn(params, "from") ?? defaults.fromDay;
  return { fromDay, toDay: laterDay(fromDay, dayIn(params, "to") ?? defaults.toDay) };
}

/** The later of two days; ISO days compare as text. */
export function laterDay(one: CalendarDay, other: CalendarDay): CalendarDay {
  if (one > other) return one;
  return other;
}

/** The search as the query of an address; {@link readTimeSearch} reads the same search from it. */
export function timeSearchQuery(search: TimeSearch): string {
  const query = new URLSearchParams({
    athletes: search.athleteIds.join(","),
    kind: search.kind,
    minutes: String(search.durationMin),
    pitches: String(search.plannedPitches),
    from: search.fromDay,
    to: search.toDay,
    coach: search.coachPersonId ?? "",
    site: search.siteId ?? "",
    ...(search.weekdays.length > 0 ? { weekdays: search.weekdays.join("") } : {}),
    ...(search.dayPart === "any" ? {} : { part: search.dayPart }),
    ...(search.roundId ? { round: search.roundId } : {}),
    ...(search.moveSessionId ? { move: search.moveSessionId } : {}),
  });
  return query.toString();
}

/** The search as the procedure takes it. Without weekdays and with any time nothing is wished for. */
export function askedTimes({ weekdays, dayPart, ...search }: TimeSearch) {
  const { fromMin, toMin } = DAY_PARTS[dayPart];
  const isWished = weekdays.length > 0 || dayPart !== "any";
  return {
    ...search,
    athleteIds: [...search.athleteIds],
    wish: isWished ? { weekdays: [...weekdays], fromMin, toMin } : null,
  };
}

/** The athletes an address names, each once. */
export function athletesIn(params: AddressParams): string[] {
  const named = [text(params, "athletes"), text(params, "athlete")].flatMap((ids) => ids?.split(",") ?? []);
  return [...new Set(named.filter((id) => id !== ""))].slice(0, 8);
}

function text(params: AddressParams, name: string): string | null {
  const value = params[name];
  return (Array.isArray(value) ? value[0] : value) || null;
}

function within(params: AddressParams, name: string, min: number, max: number): number | null {
  const number = Number(text(params, name) ?? Number.NaN);
  return Number.isInteger(number) && number >= min && number <= max ? number : null;
}

function dayIn(params: AddressParams, name: string): CalendarDay | null {
  const day = text(params, name);
  return day && isCalendarDay(day) ? day : null;
}

/** An empty choice in the address means any; a missing one leaves the default. */
function choiceIn(params: AddressParams, name: string, fallback: string | null): string | null {
  return name in params ? text(params, name) : fallback;
}

function weekdaysIn(params: AddressParams): number[] {
  const digits = [...(text(params, "weekdays") ?? "")].map(Number);
  return [...new Set(digits.filter((day) => day >= 1 && day <= 7))];
}

function dayPartIn(params: AddressParams): DayPart | null {
  const value = text(params, "part");
  return value && value in DAY_PARTS ? (value as DayPart) : null;
}
