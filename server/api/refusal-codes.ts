import { TRPCError } from "@trpc/server";
import type { TRPC_ERROR_CODE_KEY } from "@trpc/server/rpc";
import type { RefusalReason } from "@/server/domain/errors/refusal";
import { refusalOf } from "@/server/refusal-of";

/** Reason -> the code it travels under. A reason without a line does not compile. */
export const REFUSAL_CODES = {
  not_found: "NOT_FOUND",
  not_signed_in: "UNAUTHORIZED",
  sign_in_failed: "UNAUTHORIZED",
  too_many_tries: "TOO_MANY_REQUESTS",
  link_spent: "NOT_FOUND",
  password_weak: "BAD_REQUEST",
  academy_exists: "CONFLICT",
  email_taken: "CONFLICT",
  too_young_to_sign_in: "UNPROCESSABLE_CONTENT",
  last_admin: "CONFLICT",
  guardian_missing: "UNPROCESSABLE_CONTENT",
  email_missing: "UNPROCESSABLE_CONTENT",
  already_joined: "CONFLICT",
  coach_has_work: "CONFLICT",
  athlete_not_free: "CONFLICT",
  athlete_left: "CONFLICT",
  settings_invalid: "UNPROCESSABLE_CONTENT",
  changed_meanwhile: "CONFLICT",
  repeated_with_other_content: "CONFLICT",
  disk_full: "SERVICE_UNAVAILABLE",
  consent_missing: "PRECONDITION_FAILED",
  upload_missing: "UNPROCESSABLE_CONTENT",
  too_many_waiting: "CONFLICT",
  clip_not_kept: "NOT_FOUND",
  clips_of_two_days: "UNPROCESSABLE_CONTENT",
  round_state: "CONFLICT",
  round_taken_by: "CONFLICT",
  hours_missing: "PRECONDITION_FAILED",
  corrections_full: "UNPROCESSABLE_CONTENT",
  draft_incomplete: "UNPROCESSABLE_CONTENT",
  measure_invalid: "UNPROCESSABLE_CONTENT",
  too_few_frames: "UNPROCESSABLE_CONTENT",
  blind_set_closed: "CONFLICT",
  rated_before: "CONFLICT",
  practice_day_invalid: "UNPROCESSABLE_CONTENT",
  frame_outside_clip: "UNPROCESSABLE_CONTENT",
  outside_coach_hours: "UNPROCESSABLE_CONTENT",
  site_closed: "UNPROCESSABLE_CONTENT",
  no_lane: "CONFLICT",
  time_taken: "CONFLICT",
  arm_resting: "UNPROCESSABLE_CONTENT",
  too_many_pitches: "UNPROCESSABLE_CONTENT",
  pain_stop: "UNPROCESSABLE_CONTENT",
  too_soon: "UNPROCESSABLE_CONTENT",
  too_far_ahead: "UNPROCESSABLE_CONTENT",
  second_adult_missing: "UNPROCESSABLE_CONTENT",
  session_state: "CONFLICT",
  session_not_started: "UNPROCESSABLE_CONTENT",
  check_in_missing: "PRECONDITION_FAILED",
  not_a_guardian: "UNPROCESSABLE_CONTENT",
  throw_entry_invalid: "UNPROCESSABLE_CONTENT",
  already_corrected: "CONFLICT",
  pain_clearance_invalid: "UNPROCESSABLE_CONTENT",
  book_not_offered: "UNPROCESSABLE_CONTENT",
  rule_book_invalid: "UNPROCESSABLE_CONTENT",
  override_invalid: "UNPROCESSABLE_CONTENT",
  nothing_overrides_pain: "UNPROCESSABLE_CONTENT",
  no_rate: "PRECONDITION_FAILED",
  rates_overlap: "CONFLICT",
  in_use: "CONFLICT",
  hours_invalid: "UNPROCESSABLE_CONTENT",
  report_invalid: "UNPROCESSABLE_CONTENT",
} as const satisfies Record<RefusalReason, TRPC_ERROR_CODE_KEY>;

/** A refusal, or a full disk, as the wire's error; anything else is passed on as it is. */
export function asWireError(error: unknown): unknown {
  const refusal = refusalOf(error);
  if (!refusal) return error;
  return new TRPCError({
    code: REFUSAL_CODES[refusal.detail.reason],
    message: refusal.message,
    cause: refusal,
  });
}
