import type { CalendarDay } from "../time/calendar-day";

/** Reason -> the facts its sentence and its screen need. Instants in epoch ms, days as `YYYY-MM-DD`. */
export interface RefusalFacts {
  /** No such thing, or not this caller's: the two look the same. */
  not_found: object;
  not_signed_in: object;
  sign_in_failed: object;
  too_many_tries: { retryAfterMs: number };
  link_spent: object;
  password_weak: { why: "too_short" | "too_long" | "common" };
  academy_exists: object;
  email_taken: object;
  too_young_to_sign_in: { ageYears: number };
  last_admin: object;
  /** A minor would stand without anybody on record who acts for them. */
  guardian_missing: { athleteGivenName: string };
  email_missing: object;
  already_joined: object;
  coach_has_work: { sessions: number; rounds: number };
  /** Something is booked for an athlete from the day they would leave on, or a review is owed to them. */
  athlete_not_free: {
    athleteGivenName: string;
    booked: readonly string[];
    moreBooked: number;
    rounds: number;
  };
  athlete_left: { athleteGivenName: string; leftOn: CalendarDay };
  settings_invalid: { why: string };
  changed_meanwhile: object;
  repeated_with_other_content: object;
  /** Nothing more can be written; whoever runs the academy makes room. */
  disk_full: object;

  consent_missing: { athleteGivenName: string };
  upload_missing: object;
  too_many_waiting: { max: number };
  clip_not_kept: object;
  clips_of_two_days: object;
  round_state: { action: string; state: string };
  round_taken_by: { coachName: string };
  hours_missing: { siteName: string };
  corrections_full: { open: number; max: number };
  draft_incomplete: { missing: readonly string[] };
  measure_invalid: { why: string };
  /** A blind set cannot be drawn: that many frames are not there. */
  too_few_frames: { asked: number; there: number };
  blind_set_closed: object;
  rated_before: object;
  practice_day_invalid: { why: string };
  frame_outside_clip: { frame: number; frameCount: number };

  outside_coach_hours: object;
  site_closed: { day: CalendarDay };
  no_lane: object;
  time_taken: { what: "coach" | "lane" | "athlete" | "second_adult" };
  arm_resting: { firstFreeDay: CalendarDay | null; why: string; dryWorkFits: boolean };
  too_many_pitches: { atMost: number; why: string };
  pain_stop: { since: CalendarDay };
  too_soon: { noticeMin: number };
  too_far_ahead: { horizonDays: number };
  second_adult_missing: object;
  session_state: { action: string; state: string };
  session_not_started: { startsAtMs: number };
  check_in_missing: object;
  not_a_guardian: object;

  throw_entry_invalid: { why: string };
  already_corrected: object;
  pain_clearance_invalid: { why: string };
  /** A rule book that is not offered for choosing; what goes by it already stays. */
  book_not_offered: { bookName: string; why: string };
  rule_book_invalid: { why: string };
  override_invalid: { why: string };
  /** An override of a limit was asked for while the arm is stopped. */
  nothing_overrides_pain: { since: CalendarDay };
  no_rate: { kind: string; day: CalendarDay };
  rates_overlap: object;
  in_use: { what: string };
  hours_invalid: { why: string };
  /** A report that cannot be drawn up, written or opened to others as asked. */
  report_invalid: { why: string };
}

/** The fixed reasons a request may be refused for, each with the facts its screen needs. */
export type RefusalReason = keyof RefusalFacts;

/** One reason with its facts. */
export type RefusalDetail = {
  [Reason in RefusalReason]: { reason: Reason } & RefusalFacts[Reason];
}[RefusalReason];
