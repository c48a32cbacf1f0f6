import { dayOf } from "@/server/domain/time/calendar-day";
import { isUnlogged } from "../calendar/session-state";
import type { MonthDifference } from "./month-differences";
import type { MonthRecords } from "./month-records";
import { type Rate, rateOn } from "./rates";

/** One thing to mend before a month is whole. */
export type ToMend =
  | { mend: "not_logged"; sessionId: string; startsAtMs: number; zone: string; names: string[] }
  | { mend: "no_rate"; kind: MonthRecords["sessions"][number]["kind"]; day: string; sessions: number }
  | { mend: "difference"; difference: MonthDifference };

/** The records of a month whose sessions say when they are over. */
export type DatedRecords = Omit<MonthRecords, "sessions"> & {
  sessions: readonly (MonthRecords["sessions"][number] & { endsAtMs: number })[];
};

/**
 * What is left to mend in a month: sessions that are over and not logged, kinds that are booked for a day without a
 * price (one line a kind, with the first such day), and whatever keeps rows and charges from saying the same.
 */
export function toMend(
  records: DatedRecords,
  differences: readonly MonthDifference[],
  rates: readonly Rate[],
  nowMs: number,
): ToMend[] {
  const own = records.sessions
    .filter(({ startsAtMs, zone }) => dayOf(startsAtMs, zone).startsWith(`${records.month}-`))
    .sort((a, b) => a.startsAtMs - b.startsAtMs);
  const notLogged = own
    .filter((session) => isUnlogged(session, nowMs))
    .map(({ id, startsAtMs, zone, athletes }) => ({
      ...{ mend: "not_logged" as const, sessionId: id, startsAtMs, zone },
      names: athletes.map((one) => one.name),
    }));
  return [
    ...notLogged,
    ...withoutRate(own, rates),
    ...differences.map((difference) => ({ mend: "difference" as const, difference })),
  ];
}

function withoutRate(sessions: MonthRecords["sessions"], rates: readonly Rate[]): ToMend[] {
  const unpriced = sessions
    .filter(({ state }) => state === "booked" || state === "checked_in")
    .map(({ kind, startsAtMs, zone }) => ({ kind, day: dayOf(startsAtMs, zone) }))
    .filter(({ kind, day }) => !rateOn(rates, kind, day).ok);
  const kinds = [...new Set(unpriced.map(({ kind }) => kind))];
  return kinds.flatMap((kind) => {
    const ofKind = unpriced.filter((one) => one.kind === kind);
    const day = ofKind[0]?.day;
    return day === undefined ? [] : [{ mend: "no_rate" as const, kind, day, sessions: ofKind.length }];
  });
}
