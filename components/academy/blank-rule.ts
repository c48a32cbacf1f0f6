import type { Rule, RuleKind } from "@/server/domain/throwing/rule";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

const EMPTY = Number.NaN;
const AGES = { ageMin: EMPTY, ageMax: EMPTY };

/** A rule of a kind to be filled in: in force from a day, with no figure of its own yet. */
export function blankRule(kind: RuleKind, effectiveFrom: CalendarDay): Rule {
  const head = { level: "limit", effectiveFrom, effectiveUntil: null, source: "" } as const;
  switch (kind) {
    case "pitch_count": {
      const rest = { minPitches: 1, maxPitches: EMPTY, restDays: 0 };
      const bands = [{ ...AGES, dailyMaxPitches: EMPTY, restBands: [rest] }];
      return {
        ...{ kind, ...head, ageBands: bands, restCountsFrom: "total" },
        ...{ finishesBatter: false, intentionalWalkPitches: 0 },
      };
    }
    case "innings": {
      const bands = [{ ...AGES, outsPerDay: EMPTY }];
      return { kind, ...head, ageBands: bands, outsWithoutRest: null, rolling: null, counted: "outs" };
    }
    case "days_in_a_row":
      return { kind, ...head, maxDays: EMPTY };
    case "one_game_a_day":
      return { kind, ...head };
    case "catching":
      return { kind, ...head, inningsThatBarPitching: null, pitchesThatBarCatching: null, afterCatching: [] };
    case "total":
      return { kind, ...head, unit: "pitches", over: { days: EMPTY }, ageBands: [{ ...AGES, most: EMPTY }] };
    case "months_off": {
      const bands = [{ ...AGES, months: EMPTY, runMonths: EMPTY }];
      return { kind, ...head, level: "advice", of: "throwing", ageBands: bands };
    }
  }
}
