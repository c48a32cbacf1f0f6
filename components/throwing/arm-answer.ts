import type { ArmMark } from "@/server/domain/throwing/arm-marks";
import type { PainKind } from "@/server/domain/throwing/pain";
import type { Standing } from "@/server/domain/throwing/rule-book";
import type { ThrowKind } from "@/server/domain/throwing/throw-entry";
import type { WeekOfThrows } from "@/server/domain/throwing/throws-by-week";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import type { LoadAnswer } from "./load-answer";

/** What the book leaves an arm on a day, as a procedure answers it. */
export interface ArmAnswer {
  words: string;
  why: readonly string[];
  marks: readonly ArmMark[];
}

/** The stop an arm is under and what was said of pain, as a procedure answers it. */
export interface PainAnswer {
  stop: { kind: PainKind; firstFeltOn: CalendarDay; lastFeltOn: CalendarDay } | null;
  /** Whether the one who looks may clear it. */
  mayClear: boolean;
  clearedBy: "guardian" | "athlete";
  reports: readonly {
    id: string;
    kind: PainKind;
    feltOn: CalendarDay;
    reportedAtMs: number;
    note: string;
    byName: string;
  }[];
  clearances: readonly {
    id: string;
    symptomFreeSince: CalendarDay;
    clearedAtMs: number;
    examinedBy: string;
    byName: string;
  }[];
}

/** One row of the log, as a procedure answers it. */
export interface LogRow {
  id: string;
  thrownOn: CalendarDay;
  kind: ThrowKind;
  pitches: number;
  outs: number | null;
  inningsCaught: number | null;
  pitchesAtLastBatter: number | null;
  intentionalWalks: number;
  teamId: string | null;
  teamName: string;
  opponent: string;
  note: string;
  byName: string;
  reportedAtMs: number;
  origin: "log" | "session" | "clip";
  corrects: { thrownOn: CalendarDay; kind: ThrowKind; pitches: number } | null;
  mayCorrect: boolean;
}

/** A book an arm goes by, as a procedure answers it. */
export interface BookAnswer {
  name: string;
  source: string;
  standing: Standing;
  sampleYear: number | null;
  /** The age it counts the athlete at today. */
  ageYears: number;
  notes: readonly string[];
  advice: readonly string[];
}

/** Everything the throwing page shows, as a procedure answers it. */
export interface ThrowingAnswer {
  athlete: { athleteId: string; givenName: string; name: string; ageYears: number; zone: string };
  today: CalendarDay;
  arm: ArmAnswer;
  /** The books the arm goes by, the athlete's own first. */
  books: readonly BookAnswer[];
  pain: PainAnswer;
  log: readonly LogRow[];
  outings: readonly {
    id: string;
    plannedOn: CalendarDay;
    pitches: number;
    teamId: string | null;
    teamName: string | null;
  }[];
  teams: {
    teams: readonly { id: string; name: string; bookName: string; hasEnded: boolean }[];
    mayManage: boolean;
    books: readonly { id: string; name: string }[];
  };
  weeks: readonly WeekOfThrows[];
  /** Which mound work counts, in a sentence. */
  reading: string;
  load: LoadAnswer;
}
