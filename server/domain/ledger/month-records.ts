import type { SessionKind } from "@/server/domain/calendar/session-kind";
import type { Attendance, SessionState } from "@/server/domain/calendar/session-state";
import type { CurrencyCode } from "@/server/domain/money/money";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import type { Charge } from "./charge";
import type { ChargeKind } from "./charge-kind";

/** A session as the month's books see it; names as they stand now. */
export interface MonthSession {
  id: string;
  kind: SessionKind;
  state: SessionState;
  startsAtMs: number;
  zone: string;
  siteName: string;
  coachId: string;
  coachName: string;
  /** `log` is null until the session is logged. */
  athletes: readonly {
    id: string;
    name: string;
    log: { attendance: Attendance; minutes: number; pitches: number } | null;
  }[];
}

/** A review that was sent, `zone` and site being the athlete's own. */
export interface MonthReview {
  id: string;
  roundId: string;
  sentAtMs: number;
  zone: string;
  siteName: string;
  coachId: string;
  coachName: string;
  athlete: { id: string; name: string };
}

/** A charge that was written down, with the price of its rate beside it. A reversal points at what it takes back. */
export interface MonthCharge extends Charge {
  id: string;
  source: { kind: "session"; sessionId: string } | { kind: "review"; reviewId: string };
  rateCents: number;
  reversesId: string | null;
}

/** How a row stands: a session's state, or `sent` for a review. An athlete who missed a held session is a no-show. */
export type MonthRowState = SessionState | "sent";

/** One session and athlete, or one review. Null where there is nothing to say: not logged, not thrown, not charged. */
export interface MonthRow {
  day: CalendarDay;
  startTime: string;
  siteName: string;
  kind: ChargeKind;
  athleteId: string;
  athleteName: string;
  coachId: string;
  coachName: string;
  minutes: number | null;
  pitches: number | null;
  rateCents: number | null;
  amountCents: number;
  currency: CurrencyCode;
  state: MonthRowState;
  /** The session, or the round that the review belongs to. */
  referenceId: string;
  startsAtMs: number;
  chargeIds: string[];
}

/** What the books of a month are made from. What does not touch the month is left out: a wider span does no harm. */
export interface MonthRecords {
  /** `YYYY-MM`. */
  month: string;
  /** The academy's: the currency of a row that nothing was charged for. */
  currency: CurrencyCode;
  sessions: readonly MonthSession[];
  reviews: readonly MonthReview[];
  charges: readonly MonthCharge[];
}
