CREATE TABLE `checkpoint` (
	`id` text PRIMARY KEY NOT NULL,
	`phase` text NOT NULL,
	`event` text NOT NULL,
	`name` text NOT NULL,
	`absent_looks_like` text NOT NULL,
	`clear_looks_like` text NOT NULL,
	`views` text NOT NULL,
	`cues` text NOT NULL,
	`drills` text NOT NULL,
	`source` text NOT NULL,
	`position` integer NOT NULL,
	`active` integer DEFAULT true NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	CONSTRAINT "checkpoint_phase" CHECK("checkpoint"."phase" IN ('wind_up', 'stride', 'arm_cocking', 'acceleration', 'deceleration', 'follow_through')),
	CONSTRAINT "checkpoint_event" CHECK("checkpoint"."event" IN ('first_movement', 'peak_knee_height', 'front_foot_contact', 'max_external_rotation', 'ball_release', 'finish')),
	CONSTRAINT "checkpoint_lists_json" CHECK(json_valid("checkpoint"."views") AND json_valid("checkpoint"."cues") AND json_valid("checkpoint"."drills"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `clip` (
	`id` text PRIMARY KEY NOT NULL,
	`athlete_id` text NOT NULL,
	`round_id` text,
	`part` text,
	`state` text NOT NULL,
	`view` text,
	`pitch_type` text,
	`pitches_thrown` integer,
	`already_on_log` integer,
	`note` text,
	`filmed_on` text,
	`position` integer DEFAULT 0 NOT NULL,
	`upload_id` text,
	`uploaded_by_person_id` text,
	`created_at_ms` integer NOT NULL,
	`retain_until` text NOT NULL,
	`storage_name` text,
	`content_type` text,
	`byte_count` integer,
	`sha256` text,
	`duration_ms` real,
	`width_px` integer,
	`height_px` integer,
	`rotation_deg` integer,
	`codec` text,
	`captured_fps` real,
	`frame_count` integer,
	`frame_times_ms` text,
	`has_poster` integer DEFAULT false NOT NULL,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`round_id`) REFERENCES `round`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`uploaded_by_person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "clip_state" CHECK("clip"."state" IN ('waiting', 'ready', 'drawing', 'replaced', 'expired')),
	CONSTRAINT "clip_part" CHECK("clip"."part" IN ('first', 'reply')),
	CONSTRAINT "clip_view" CHECK("clip"."view" IN ('front', 'back', 'open_side', 'closed_side')),
	CONSTRAINT "clip_pitch_type" CHECK("clip"."pitch_type" IN ('fastball', 'change_up', 'curveball', 'slider', 'other')),
	CONSTRAINT "clip_pitches_thrown" CHECK("clip"."pitches_thrown" BETWEEN 0 AND 400),
	CONSTRAINT "clip_byte_count" CHECK("clip"."byte_count" BETWEEN 1 AND 1000000000),
	CONSTRAINT "clip_retain_until" CHECK("clip"."retain_until" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "clip_frames_json" CHECK("clip"."frame_times_ms" IS NULL OR json_valid("clip"."frame_times_ms")),
	CONSTRAINT "clip_ready_is_whole" CHECK("clip"."state" <> 'ready' OR ("clip"."round_id" IS NOT NULL AND "clip"."storage_name" IS NOT NULL AND "clip"."frame_count" > 0))
) STRICT;
--> statement-breakpoint
CREATE INDEX `clip_by_round` ON `clip` (`round_id`,`position`);--> statement-breakpoint
CREATE INDEX `clip_by_athlete` ON `clip` (`athlete_id`);--> statement-breakpoint
CREATE INDEX `clip_by_retention` ON `clip` (`state`,`retain_until`);--> statement-breakpoint
CREATE UNIQUE INDEX `clip_upload_once` ON `clip` (`upload_id`);--> statement-breakpoint
CREATE TABLE `clip_view` (
	`id` text PRIMARY KEY NOT NULL,
	`clip_id` text NOT NULL,
	`person_id` text NOT NULL,
	`at_ms` integer NOT NULL
) STRICT;
--> statement-breakpoint
CREATE INDEX `clip_view_by_clip` ON `clip_view` (`clip_id`,`at_ms`);--> statement-breakpoint
CREATE TABLE `coach_absence` (
	`id` text PRIMARY KEY NOT NULL,
	`coach_person_id` text NOT NULL,
	`starts_at_ms` integer NOT NULL,
	`ends_at_ms` integer NOT NULL,
	FOREIGN KEY (`coach_person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "coach_absence_span" CHECK("coach_absence"."starts_at_ms" < "coach_absence"."ends_at_ms")
) STRICT;
--> statement-breakpoint
CREATE INDEX `coach_absence_by_coach` ON `coach_absence` (`coach_person_id`,`starts_at_ms`);--> statement-breakpoint
CREATE TABLE `coach_hours` (
	`id` text PRIMARY KEY NOT NULL,
	`coach_person_id` text NOT NULL,
	`site_id` text NOT NULL,
	`weekday` integer NOT NULL,
	`starts_min` integer NOT NULL,
	`ends_min` integer NOT NULL,
	FOREIGN KEY (`coach_person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`site_id`) REFERENCES `site`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "coach_hours_weekday" CHECK("coach_hours"."weekday" BETWEEN 1 AND 7),
	CONSTRAINT "coach_hours_span" CHECK(0 <= "coach_hours"."starts_min" AND "coach_hours"."starts_min" < "coach_hours"."ends_min" AND "coach_hours"."ends_min" <= 1440)
) STRICT;
--> statement-breakpoint
CREATE INDEX `coach_hours_by_coach` ON `coach_hours` (`coach_person_id`);--> statement-breakpoint
CREATE TABLE `correction` (
	`id` text PRIMARY KEY NOT NULL,
	`athlete_id` text NOT NULL,
	`review_id` text NOT NULL,
	`round_id` text NOT NULL,
	`checkpoint_id` text NOT NULL,
	`phase` text NOT NULL,
	`cue` text NOT NULL,
	`drill` text NOT NULL,
	`clip_id` text,
	`frame` integer,
	`position` integer NOT NULL,
	`state` text NOT NULL,
	`came_back` integer DEFAULT false NOT NULL,
	`given_at_ms` integer NOT NULL,
	`closed_at_ms` integer,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`review_id`) REFERENCES `review`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`round_id`) REFERENCES `round`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`checkpoint_id`) REFERENCES `checkpoint`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "correction_state" CHECK("correction"."state" IN ('given', 'showing', 'held', 'retired')),
	CONSTRAINT "correction_phase" CHECK("correction"."phase" IN ('wind_up', 'stride', 'arm_cocking', 'acceleration', 'deceleration', 'follow_through'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `correction_by_athlete` ON `correction` (`athlete_id`,`state`);--> statement-breakpoint
CREATE INDEX `correction_by_review` ON `correction` (`review_id`);--> statement-breakpoint
CREATE TABLE `correction_event` (
	`id` text PRIMARY KEY NOT NULL,
	`correction_id` text NOT NULL,
	`kind` text NOT NULL,
	`round_id` text,
	`session_id` text,
	`clip_id` text,
	`frame` integer,
	`remark_id` text,
	`actor_person_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`correction_id`) REFERENCES `correction`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`remark_id`) REFERENCES `remark`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "correction_event_kind" CHECK("correction_event"."kind" IN ('given', 'not_yet', 'partly', 'yes', 'confirmed', 'retired'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `correction_event_by_correction` ON `correction_event` (`correction_id`,`at_ms`);--> statement-breakpoint
CREATE TABLE `practice_day` (
	`correction_id` text NOT NULL,
	`practised_on` text NOT NULL,
	`ticked_by_person_id` text NOT NULL,
	PRIMARY KEY(`correction_id`, `practised_on`),
	FOREIGN KEY (`correction_id`) REFERENCES `correction`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `charge` (
	`id` text PRIMARY KEY NOT NULL,
	`athlete_id` text NOT NULL,
	`kind` text NOT NULL,
	`session_id` text,
	`review_id` text,
	`coach_person_id` text NOT NULL,
	`site_id` text NOT NULL,
	`charged_on` text NOT NULL,
	`rate_id` text NOT NULL,
	`amount_cents` integer NOT NULL,
	`currency` text NOT NULL,
	`reverses_id` text,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`rate_id`) REFERENCES `rate`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "charge_kind" CHECK("charge"."kind" IN ('lesson', 'bullpen', 'group', 'assessment', 'dry_work', 'review')),
	CONSTRAINT "charge_day" CHECK("charge"."charged_on" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "charge_of_one_thing" CHECK(("charge"."session_id" IS NULL) <> ("charge"."review_id" IS NULL)),
	CONSTRAINT "charge_sign" CHECK(("charge"."reverses_id" IS NULL AND "charge"."amount_cents" >= 0) OR ("charge"."reverses_id" IS NOT NULL AND "charge"."amount_cents" <= 0))
) STRICT;
--> statement-breakpoint
CREATE INDEX `charge_by_day` ON `charge` (`charged_on`);--> statement-breakpoint
CREATE INDEX `charge_by_athlete` ON `charge` (`athlete_id`,`charged_on`);--> statement-breakpoint
CREATE UNIQUE INDEX `charge_session_once` ON `charge` (`session_id`,`athlete_id`) WHERE session_id IS NOT NULL AND reverses_id IS NULL;--> statement-breakpoint
CREATE UNIQUE INDEX `charge_review_once` ON `charge` (`review_id`) WHERE review_id IS NOT NULL AND reverses_id IS NULL;--> statement-breakpoint
CREATE UNIQUE INDEX `charge_reversed_once` ON `charge` (`reverses_id`);--> statement-breakpoint
CREATE TABLE `rate` (
	`id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`price_cents` integer NOT NULL,
	`currency` text NOT NULL,
	`effective_from` text NOT NULL,
	`effective_to` text,
	CONSTRAINT "rate_kind" CHECK("rate"."kind" IN ('lesson', 'bullpen', 'group', 'assessment', 'dry_work', 'review')),
	CONSTRAINT "rate_price" CHECK("rate"."price_cents" BETWEEN 0 AND 100000000),
	CONSTRAINT "rate_from" CHECK("rate"."effective_from" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "rate_span" CHECK("rate"."effective_to" IS NULL OR "rate"."effective_from" < "rate"."effective_to")
) STRICT;
--> statement-breakpoint
CREATE INDEX `rate_by_kind` ON `rate` (`kind`,`effective_from`);--> statement-breakpoint
CREATE TABLE `event_mark` (
	`id` text PRIMARY KEY NOT NULL,
	`review_id` text NOT NULL,
	`clip_id` text NOT NULL,
	`event` text NOT NULL,
	`frame` integer NOT NULL,
	FOREIGN KEY (`review_id`) REFERENCES `review`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "event_mark_event" CHECK("event_mark"."event" IN ('first_movement', 'peak_knee_height', 'front_foot_contact', 'max_external_rotation', 'ball_release', 'finish')),
	CONSTRAINT "event_mark_frame" CHECK("event_mark"."frame" BETWEEN 0 AND 1000000)
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `event_mark_once` ON `event_mark` (`review_id`,`clip_id`,`event`);--> statement-breakpoint
CREATE INDEX `event_mark_by_clip` ON `event_mark` (`clip_id`);--> statement-breakpoint
CREATE TABLE `judgement` (
	`id` text PRIMARY KEY NOT NULL,
	`athlete_id` text NOT NULL,
	`checkpoint_id` text NOT NULL,
	`review_id` text,
	`session_id` text,
	`clip_id` text,
	`frame` integer,
	`view` text,
	`score` integer NOT NULL,
	`coach_person_id` text NOT NULL,
	`judged_on` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`checkpoint_id`) REFERENCES `checkpoint`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`review_id`) REFERENCES `review`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "judgement_score" CHECK("judgement"."score" BETWEEN 0 AND 3)
) STRICT;
--> statement-breakpoint
CREATE INDEX `judgement_by_athlete` ON `judgement` (`athlete_id`,`checkpoint_id`,`at_ms`);--> statement-breakpoint
CREATE TABLE `notice` (
	`id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`to_person_id` text NOT NULL,
	`about_athlete_id` text,
	`subject` text NOT NULL,
	`body` text NOT NULL,
	`state` text NOT NULL,
	`attempts` integer DEFAULT 0 NOT NULL,
	`next_try_at_ms` integer NOT NULL,
	`last_error` text,
	`created_at_ms` integer NOT NULL,
	`sent_at_ms` integer,
	FOREIGN KEY (`to_person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "notice_kind" CHECK("notice"."kind" IN ('invitation', 'reset', 'clip_received', 'round_taken', 'retake_asked', 'review_sent', 'addendum_sent', 'answer_received', 'check_sent', 'round_lapsed', 'round_withdrawn', 'session_booked', 'session_moved', 'session_cancelled', 'session_logged', 'session_without_room', 'pain_reported', 'pain_cleared', 'consent_changed')),
	CONSTRAINT "notice_state" CHECK("notice"."state" IN ('waiting', 'sent', 'kept', 'failed'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `notice_by_state` ON `notice` (`state`,`next_try_at_ms`);--> statement-breakpoint
CREATE INDEX `notice_by_time` ON `notice` (`created_at_ms`);--> statement-breakpoint
CREATE TABLE `academy` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`currency` text NOT NULL,
	`is_demo` integer NOT NULL,
	`promise_kind` text NOT NULL,
	`promise_amount` integer NOT NULL,
	`max_open_corrections` integer NOT NULL,
	`reply_span_days` integer NOT NULL,
	`follow_up_days` integer NOT NULL,
	`clip_retention_days` integer NOT NULL,
	`booking_notice_min` integer NOT NULL,
	`booking_horizon_days` integer NOT NULL,
	`created_at_ms` integer NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	CONSTRAINT "academy_is_one" CHECK("academy"."id" = 'academy'),
	CONSTRAINT "academy_promise_kind" CHECK("academy"."promise_kind" IN ('working_days', 'working_hours')),
	CONSTRAINT "academy_promise_amount" CHECK("academy"."promise_amount" BETWEEN 1 AND 240),
	CONSTRAINT "academy_max_open_corrections" CHECK("academy"."max_open_corrections" BETWEEN 1 AND 10),
	CONSTRAINT "academy_reply_span_days" CHECK("academy"."reply_span_days" BETWEEN 1 AND 120),
	CONSTRAINT "academy_follow_up_days" CHECK("academy"."follow_up_days" BETWEEN 1 AND 120),
	CONSTRAINT "academy_clip_retention_days" CHECK("academy"."clip_retention_days" BETWEEN 7 AND 3650),
	CONSTRAINT "academy_booking_notice_min" CHECK("academy"."booking_notice_min" BETWEEN 0 AND 20160),
	CONSTRAINT "academy_booking_horizon_days" CHECK("academy"."booking_horizon_days" BETWEEN 1 AND 400)
) STRICT;
--> statement-breakpoint
CREATE TABLE `account` (
	`person_id` text PRIMARY KEY NOT NULL,
	`email` text NOT NULL,
	`password_hash` text,
	`created_at_ms` integer NOT NULL,
	`disabled_at_ms` integer,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "account_email_lower" CHECK("account"."email" = lower("account"."email"))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `account_email_once` ON `account` (`email`);--> statement-breakpoint
CREATE TABLE `account_link` (
	`token_hash` text PRIMARY KEY NOT NULL,
	`person_id` text NOT NULL,
	`purpose` text NOT NULL,
	`created_at_ms` integer NOT NULL,
	`expires_at_ms` integer NOT NULL,
	`used_at_ms` integer,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "account_link_purpose" CHECK("account_link"."purpose" IN ('invitation', 'reset'))
) STRICT;
--> statement-breakpoint
CREATE TABLE `athlete` (
	`id` text PRIMARY KEY NOT NULL,
	`person_id` text NOT NULL,
	`born_on` text NOT NULL,
	`throws` text NOT NULL,
	`height_cm` integer,
	`home_site_id` text NOT NULL,
	`coach_person_id` text,
	`rule_book_id` text NOT NULL,
	`joined_on` text NOT NULL,
	`left_on` text,
	`grants_guardians` integer DEFAULT false NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`home_site_id`) REFERENCES `site`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`coach_person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "athlete_born_on" CHECK("athlete"."born_on" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "athlete_joined_on" CHECK("athlete"."joined_on" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "athlete_throws" CHECK("athlete"."throws" IN ('right', 'left')),
	CONSTRAINT "athlete_height" CHECK("athlete"."height_cm" BETWEEN 80 AND 230)
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `athlete_person_once` ON `athlete` (`person_id`);--> statement-breakpoint
CREATE INDEX `athlete_by_coach` ON `athlete` (`coach_person_id`);--> statement-breakpoint
CREATE TABLE `audit_log` (
	`sequence` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`at_ms` integer NOT NULL,
	`actor_person_id` text,
	`action` text NOT NULL,
	`subject_id` text NOT NULL,
	`facts` text NOT NULL,
	`previous_hash` text NOT NULL,
	`hash` text NOT NULL,
	CONSTRAINT "audit_log_facts_json" CHECK(json_valid("audit_log"."facts"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `consent` (
	`id` text PRIMARY KEY NOT NULL,
	`athlete_id` text NOT NULL,
	`person_id` text NOT NULL,
	`purpose` text NOT NULL,
	`kind` text NOT NULL,
	`text_version` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "consent_purpose" CHECK("consent"."purpose" IN ('video')),
	CONSTRAINT "consent_kind" CHECK("consent"."kind" IN ('given', 'withdrawn'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `consent_by_athlete` ON `consent` (`athlete_id`,`purpose`,`at_ms`);--> statement-breakpoint
CREATE TABLE `given_answer` (
	`request_id` text PRIMARY KEY NOT NULL,
	`person_id` text,
	`path` text NOT NULL,
	`fingerprint` text NOT NULL,
	`answer` text NOT NULL,
	`at_ms` integer NOT NULL
) STRICT;
--> statement-breakpoint
CREATE INDEX `given_answer_by_time` ON `given_answer` (`at_ms`);--> statement-breakpoint
CREATE TABLE `guardianship` (
	`guardian_person_id` text NOT NULL,
	`athlete_id` text NOT NULL,
	`since_ms` integer NOT NULL,
	`ended_at_ms` integer,
	PRIMARY KEY(`guardian_person_id`, `athlete_id`),
	FOREIGN KEY (`guardian_person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `guardianship_by_athlete` ON `guardianship` (`athlete_id`);--> statement-breakpoint
CREATE TABLE `person` (
	`id` text PRIMARY KEY NOT NULL,
	`given_name` text NOT NULL,
	`family_name` text NOT NULL,
	`email` text,
	`phone` text,
	`created_at_ms` integer NOT NULL,
	`erased_at_ms` integer
) STRICT;
--> statement-breakpoint
CREATE TABLE `remark` (
	`id` text PRIMARY KEY NOT NULL,
	`text` text NOT NULL,
	`erased_at_ms` integer
) STRICT;
--> statement-breakpoint
CREATE TABLE `sign_in` (
	`id` text PRIMARY KEY NOT NULL,
	`person_id` text NOT NULL,
	`device` text NOT NULL,
	`created_at_ms` integer NOT NULL,
	`last_seen_at_ms` integer NOT NULL,
	`expires_at_ms` integer NOT NULL,
	`ended_at_ms` integer,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `sign_in_by_person` ON `sign_in` (`person_id`);--> statement-breakpoint
CREATE TABLE `staff_role` (
	`person_id` text NOT NULL,
	`role` text NOT NULL,
	`ended_at_ms` integer,
	PRIMARY KEY(`person_id`, `role`),
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "staff_role_role" CHECK("staff_role"."role" IN ('admin', 'coach'))
) STRICT;
--> statement-breakpoint
CREATE TABLE `addendum` (
	`id` text PRIMARY KEY NOT NULL,
	`review_id` text NOT NULL,
	`coach_person_id` text NOT NULL,
	`remark_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`review_id`) REFERENCES `review`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`remark_id`) REFERENCES `remark`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `addendum_by_review` ON `addendum` (`review_id`);--> statement-breakpoint
CREATE TABLE `keep` (
	`id` text PRIMARY KEY NOT NULL,
	`review_id` text NOT NULL,
	`checkpoint_id` text,
	`phase` text NOT NULL,
	`text` text NOT NULL,
	`clip_id` text,
	`frame` integer,
	`position` integer NOT NULL,
	FOREIGN KEY (`review_id`) REFERENCES `review`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`checkpoint_id`) REFERENCES `checkpoint`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "keep_phase" CHECK("keep"."phase" IN ('wind_up', 'stride', 'arm_cocking', 'acceleration', 'deceleration', 'follow_through'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `keep_by_review` ON `keep` (`review_id`);--> statement-breakpoint
CREATE TABLE `review` (
	`id` text PRIMARY KEY NOT NULL,
	`round_id` text NOT NULL,
	`athlete_id` text NOT NULL,
	`kind` text NOT NULL,
	`coach_person_id` text NOT NULL,
	`remark_id` text,
	`opened_at_ms` integer NOT NULL,
	`sent_at_ms` integer NOT NULL,
	FOREIGN KEY (`round_id`) REFERENCES `round`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`coach_person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`remark_id`) REFERENCES `remark`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "review_kind" CHECK("review"."kind" IN ('review', 'check'))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `review_once_a_round` ON `review` (`round_id`,`kind`);--> statement-breakpoint
CREATE INDEX `review_by_sent` ON `review` (`sent_at_ms`);--> statement-breakpoint
CREATE TABLE `draft` (
	`round_id` text NOT NULL,
	`kind` text NOT NULL,
	`coach_person_id` text NOT NULL,
	`document` text NOT NULL,
	`version` integer NOT NULL,
	`opened_at_ms` integer NOT NULL,
	`saved_at_ms` integer NOT NULL,
	PRIMARY KEY(`round_id`, `kind`),
	FOREIGN KEY (`round_id`) REFERENCES `round`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`coach_person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "draft_kind" CHECK("draft"."kind" IN ('review', 'check')),
	CONSTRAINT "draft_document_json" CHECK(json_valid("draft"."document"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `round` (
	`id` text PRIMARY KEY NOT NULL,
	`athlete_id` text NOT NULL,
	`site_id` text NOT NULL,
	`state` text NOT NULL,
	`coach_person_id` text,
	`received_at_ms` integer NOT NULL,
	`taken_at_ms` integer,
	`due_at_ms` integer,
	`paused_open_ms` integer,
	`retake_from` text,
	`retake_remark_id` text,
	`sent_at_ms` integer,
	`reply_from` text,
	`lapses_on` text,
	`answered_at_ms` integer,
	`settled_at_ms` integer,
	`version` integer DEFAULT 1 NOT NULL,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`site_id`) REFERENCES `site`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`coach_person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`retake_remark_id`) REFERENCES `remark`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "round_state" CHECK("round"."state" IN ('received', 'taken', 'sent', 'answered', 'settled', 'retake', 'withdrawn', 'lapsed')),
	CONSTRAINT "round_paused_only_in_retake" CHECK(("round"."state" = 'retake') = ("round"."paused_open_ms" IS NOT NULL))
) STRICT;
--> statement-breakpoint
CREATE INDEX `round_by_due` ON `round` (`state`,`due_at_ms`);--> statement-breakpoint
CREATE INDEX `round_by_athlete` ON `round` (`athlete_id`,`received_at_ms`);--> statement-breakpoint
CREATE TABLE `round_event` (
	`id` text PRIMARY KEY NOT NULL,
	`round_id` text NOT NULL,
	`kind` text NOT NULL,
	`actor_person_id` text,
	`to_person_id` text,
	`remark_id` text,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`round_id`) REFERENCES `round`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`remark_id`) REFERENCES `remark`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "round_event_kind" CHECK("round_event"."kind" IN ('received', 'taken', 'put_back', 'handed_over', 'retake_asked', 'clip_replaced', 'sent', 'answered', 'settled', 'withdrawn', 'lapsed'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `round_event_by_round` ON `round_event` (`round_id`,`at_ms`);--> statement-breakpoint
CREATE TABLE `claim` (
	`id` text PRIMARY KEY NOT NULL,
	`session_id` text NOT NULL,
	`resource` text NOT NULL,
	`starts_at_ms` integer NOT NULL,
	`ends_at_ms` integer NOT NULL,
	FOREIGN KEY (`session_id`) REFERENCES `session`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "claim_span" CHECK("claim"."starts_at_ms" < "claim"."ends_at_ms" AND "claim"."ends_at_ms" - "claim"."starts_at_ms" <= 14400000)
) STRICT;
--> statement-breakpoint
CREATE INDEX `claim_by_resource` ON `claim` (`resource`,`starts_at_ms`);--> statement-breakpoint
CREATE INDEX `claim_by_session` ON `claim` (`session_id`);--> statement-breakpoint
CREATE TABLE `session` (
	`id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`state` text NOT NULL,
	`site_id` text NOT NULL,
	`lane_id` text NOT NULL,
	`coach_person_id` text NOT NULL,
	`starts_at_ms` integer NOT NULL,
	`ends_at_ms` integer NOT NULL,
	`places` integer NOT NULL,
	`second_adult_kind` text,
	`second_adult_person_id` text,
	`round_id` text,
	`booked_by_person_id` text NOT NULL,
	`booked_at_ms` integer NOT NULL,
	`cancelled_at_ms` integer,
	`cancel_remark_id` text,
	`version` integer DEFAULT 1 NOT NULL,
	FOREIGN KEY (`site_id`) REFERENCES `site`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`lane_id`) REFERENCES `lane`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`coach_person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`second_adult_person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`round_id`) REFERENCES `round`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`cancel_remark_id`) REFERENCES `remark`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "session_kind" CHECK("session"."kind" IN ('lesson', 'bullpen', 'group', 'assessment', 'dry_work')),
	CONSTRAINT "session_state" CHECK("session"."state" IN ('booked', 'checked_in', 'logged', 'cancelled', 'no_show')),
	CONSTRAINT "session_second_adult_kind" CHECK("session"."second_adult_kind" IN ('guardian', 'staff')),
	CONSTRAINT "session_places" CHECK("session"."places" BETWEEN 1 AND 40),
	CONSTRAINT "session_span" CHECK("session"."starts_at_ms" < "session"."ends_at_ms" AND "session"."ends_at_ms" - "session"."starts_at_ms" <= 14400000),
	CONSTRAINT "session_second_adult_whole" CHECK(("session"."second_adult_kind" IS NULL) = ("session"."second_adult_person_id" IS NULL))
) STRICT;
--> statement-breakpoint
CREATE INDEX `session_by_start` ON `session` (`starts_at_ms`);--> statement-breakpoint
CREATE TABLE `session_athlete` (
	`session_id` text NOT NULL,
	`athlete_id` text NOT NULL,
	`planned_pitches` integer NOT NULL,
	PRIMARY KEY(`session_id`, `athlete_id`),
	FOREIGN KEY (`session_id`) REFERENCES `session`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "session_athlete_pitches" CHECK("session_athlete"."planned_pitches" BETWEEN 0 AND 400)
) STRICT;
--> statement-breakpoint
CREATE INDEX `session_athlete_by_athlete` ON `session_athlete` (`athlete_id`);--> statement-breakpoint
CREATE TABLE `session_log` (
	`id` text PRIMARY KEY NOT NULL,
	`session_id` text NOT NULL,
	`athlete_id` text NOT NULL,
	`attendance` text NOT NULL,
	`minutes` integer NOT NULL,
	`pitches` integer NOT NULL,
	`remark_id` text,
	`logged_by_person_id` text NOT NULL,
	`logged_at_ms` integer NOT NULL,
	FOREIGN KEY (`session_id`) REFERENCES `session`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`remark_id`) REFERENCES `remark`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "session_log_attendance" CHECK("session_log"."attendance" IN ('came', 'no_show')),
	CONSTRAINT "session_log_minutes" CHECK("session_log"."minutes" BETWEEN 0 AND 240),
	CONSTRAINT "session_log_pitches" CHECK("session_log"."pitches" BETWEEN 0 AND 400)
) STRICT;
--> statement-breakpoint
CREATE INDEX `session_log_by_session` ON `session_log` (`session_id`);--> statement-breakpoint
CREATE INDEX `session_log_by_athlete` ON `session_log` (`athlete_id`);--> statement-breakpoint
CREATE TABLE `session_plan` (
	`session_id` text NOT NULL,
	`correction_id` text NOT NULL,
	PRIMARY KEY(`session_id`, `correction_id`),
	FOREIGN KEY (`session_id`) REFERENCES `session`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`correction_id`) REFERENCES `correction`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `session_work` (
	`session_log_id` text NOT NULL,
	`correction_id` text NOT NULL,
	`outcome` text NOT NULL,
	PRIMARY KEY(`session_log_id`, `correction_id`),
	FOREIGN KEY (`session_log_id`) REFERENCES `session_log`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`correction_id`) REFERENCES `correction`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "session_work_outcome" CHECK("session_work"."outcome" IN ('worked_on', 'confirmed'))
) STRICT;
--> statement-breakpoint
CREATE TABLE `lane` (
	`id` text PRIMARY KEY NOT NULL,
	`site_id` text NOT NULL,
	`name` text NOT NULL,
	`kind` text NOT NULL,
	`retired_at_ms` integer,
	FOREIGN KEY (`site_id`) REFERENCES `site`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "lane_kind" CHECK("lane"."kind" IN ('mound', 'flat'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `lane_by_site` ON `lane` (`site_id`);--> statement-breakpoint
CREATE TABLE `site` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`zone` text NOT NULL,
	`address` text NOT NULL,
	`retired_at_ms` integer
) STRICT;
--> statement-breakpoint
CREATE TABLE `site_closure` (
	`id` text PRIMARY KEY NOT NULL,
	`site_id` text NOT NULL,
	`closed_on` text NOT NULL,
	`reason` text NOT NULL,
	FOREIGN KEY (`site_id`) REFERENCES `site`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "site_closure_day" CHECK("site_closure"."closed_on" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `site_closure_once` ON `site_closure` (`site_id`,`closed_on`);--> statement-breakpoint
CREATE TABLE `site_hours` (
	`id` text PRIMARY KEY NOT NULL,
	`site_id` text NOT NULL,
	`weekday` integer NOT NULL,
	`opens_min` integer NOT NULL,
	`closes_min` integer NOT NULL,
	FOREIGN KEY (`site_id`) REFERENCES `site`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "site_hours_weekday" CHECK("site_hours"."weekday" BETWEEN 1 AND 7),
	CONSTRAINT "site_hours_span" CHECK(0 <= "site_hours"."opens_min" AND "site_hours"."opens_min" < "site_hours"."closes_min" AND "site_hours"."closes_min" <= 1440)
) STRICT;
--> statement-breakpoint
CREATE INDEX `site_hours_by_site` ON `site_hours` (`site_id`);--> statement-breakpoint
CREATE TABLE `check_in` (
	`id` text PRIMARY KEY NOT NULL,
	`session_id` text NOT NULL,
	`athlete_id` text NOT NULL,
	`thrown_since` integer NOT NULL,
	`pain` integer NOT NULL,
	`asked_by_person_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "check_in_flags" CHECK("check_in"."thrown_since" IN (0, 1) AND "check_in"."pain" IN (0, 1))
) STRICT;
--> statement-breakpoint
CREATE INDEX `check_in_by_session` ON `check_in` (`session_id`,`athlete_id`);--> statement-breakpoint
CREATE TABLE `pain_clearance` (
	`id` text PRIMARY KEY NOT NULL,
	`athlete_id` text NOT NULL,
	`symptom_free_since` text NOT NULL,
	`examined_by_remark_id` text NOT NULL,
	`cleared_by_person_id` text NOT NULL,
	`cleared_at_ms` integer NOT NULL,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`examined_by_remark_id`) REFERENCES `remark`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "pain_clearance_day" CHECK("pain_clearance"."symptom_free_since" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
) STRICT;
--> statement-breakpoint
CREATE INDEX `pain_clearance_by_athlete` ON `pain_clearance` (`athlete_id`,`cleared_at_ms`);--> statement-breakpoint
CREATE TABLE `pain_report` (
	`id` text PRIMARY KEY NOT NULL,
	`athlete_id` text NOT NULL,
	`kind` text NOT NULL,
	`felt_on` text NOT NULL,
	`session_id` text,
	`remark_id` text,
	`reported_by_person_id` text NOT NULL,
	`reported_at_ms` integer NOT NULL,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`remark_id`) REFERENCES `remark`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "pain_report_kind" CHECK("pain_report"."kind" IN ('pain', 'unusual_fatigue')),
	CONSTRAINT "pain_report_day" CHECK("pain_report"."felt_on" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
) STRICT;
--> statement-breakpoint
CREATE INDEX `pain_report_by_athlete` ON `pain_report` (`athlete_id`,`reported_at_ms`);--> statement-breakpoint
CREATE TABLE `planned_outing` (
	`id` text PRIMARY KEY NOT NULL,
	`athlete_id` text NOT NULL,
	`planned_on` text NOT NULL,
	`pitches` integer NOT NULL,
	`added_by_person_id` text NOT NULL,
	`added_at_ms` integer NOT NULL,
	`cancelled_at_ms` integer,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "planned_outing_pitches" CHECK("planned_outing"."pitches" BETWEEN 1 AND 400),
	CONSTRAINT "planned_outing_day" CHECK("planned_outing"."planned_on" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
) STRICT;
--> statement-breakpoint
CREATE INDEX `planned_outing_by_athlete` ON `planned_outing` (`athlete_id`,`planned_on`);--> statement-breakpoint
CREATE TABLE `throw_entry` (
	`id` text PRIMARY KEY NOT NULL,
	`athlete_id` text NOT NULL,
	`thrown_on` text NOT NULL,
	`kind` text NOT NULL,
	`pitches` integer NOT NULL,
	`session_id` text,
	`clip_id` text,
	`replaces_id` text,
	`reported_by_person_id` text NOT NULL,
	`reported_at_ms` integer NOT NULL,
	`remark_id` text,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`remark_id`) REFERENCES `remark`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "throw_entry_kind" CHECK("throw_entry"."kind" IN ('game', 'bullpen', 'lesson', 'live_at_bats', 'showcase', 'flat_ground', 'long_toss', 'weighted_balls')),
	CONSTRAINT "throw_entry_pitches" CHECK("throw_entry"."pitches" BETWEEN 0 AND 400),
	CONSTRAINT "throw_entry_day" CHECK("throw_entry"."thrown_on" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
) STRICT;
--> statement-breakpoint
CREATE INDEX `throw_entry_by_athlete` ON `throw_entry` (`athlete_id`,`thrown_on`);--> statement-breakpoint
CREATE UNIQUE INDEX `throw_entry_replaced_once` ON `throw_entry` (`replaces_id`);
--> statement-breakpoint
CREATE TRIGGER consent_append_only_update BEFORE UPDATE ON consent BEGIN SELECT RAISE(ABORT, 'consent_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER consent_append_only_delete BEFORE DELETE ON consent BEGIN SELECT RAISE(ABORT, 'consent_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER audit_log_append_only_update BEFORE UPDATE ON audit_log BEGIN SELECT RAISE(ABORT, 'audit_log_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER audit_log_append_only_delete BEFORE DELETE ON audit_log BEGIN SELECT RAISE(ABORT, 'audit_log_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER clip_view_append_only_update BEFORE UPDATE ON clip_view BEGIN SELECT RAISE(ABORT, 'clip_view_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER clip_view_append_only_delete BEFORE DELETE ON clip_view BEGIN SELECT RAISE(ABORT, 'clip_view_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER round_event_append_only_update BEFORE UPDATE ON round_event BEGIN SELECT RAISE(ABORT, 'round_event_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER round_event_append_only_delete BEFORE DELETE ON round_event BEGIN SELECT RAISE(ABORT, 'round_event_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER review_append_only_update BEFORE UPDATE ON review BEGIN SELECT RAISE(ABORT, 'review_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER review_append_only_delete BEFORE DELETE ON review BEGIN SELECT RAISE(ABORT, 'review_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER addendum_append_only_update BEFORE UPDATE ON addendum BEGIN SELECT RAISE(ABORT, 'addendum_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER addendum_append_only_delete BEFORE DELETE ON addendum BEGIN SELECT RAISE(ABORT, 'addendum_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER event_mark_append_only_update BEFORE UPDATE ON event_mark BEGIN SELECT RAISE(ABORT, 'event_mark_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER event_mark_append_only_delete BEFORE DELETE ON event_mark BEGIN SELECT RAISE(ABORT, 'event_mark_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER judgement_append_only_update BEFORE UPDATE ON judgement BEGIN SELECT RAISE(ABORT, 'judgement_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER judgement_append_only_delete BEFORE DELETE ON judgement BEGIN SELECT RAISE(ABORT, 'judgement_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER correction_event_append_only_update BEFORE UPDATE ON correction_event BEGIN SELECT RAISE(ABORT, 'correction_event_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER correction_event_append_only_delete BEFORE DELETE ON correction_event BEGIN SELECT RAISE(ABORT, 'correction_event_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER throw_entry_append_only_update BEFORE UPDATE ON throw_entry BEGIN SELECT RAISE(ABORT, 'throw_entry_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER throw_entry_append_only_delete BEFORE DELETE ON throw_entry BEGIN SELECT RAISE(ABORT, 'throw_entry_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER pain_report_append_only_update BEFORE UPDATE ON pain_report BEGIN SELECT RAISE(ABORT, 'pain_report_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER pain_report_append_only_delete BEFORE DELETE ON pain_report BEGIN SELECT RAISE(ABORT, 'pain_report_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER pain_clearance_append_only_update BEFORE UPDATE ON pain_clearance BEGIN SELECT RAISE(ABORT, 'pain_clearance_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER pain_clearance_append_only_delete BEFORE DELETE ON pain_clearance BEGIN SELECT RAISE(ABORT, 'pain_clearance_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER check_in_append_only_update BEFORE UPDATE ON check_in BEGIN SELECT RAISE(ABORT, 'check_in_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER check_in_append_only_delete BEFORE DELETE ON check_in BEGIN SELECT RAISE(ABORT, 'check_in_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER session_log_append_only_update BEFORE UPDATE ON session_log BEGIN SELECT RAISE(ABORT, 'session_log_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER session_log_append_only_delete BEFORE DELETE ON session_log BEGIN SELECT RAISE(ABORT, 'session_log_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER session_work_append_only_update BEFORE UPDATE ON session_work BEGIN SELECT RAISE(ABORT, 'session_work_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER session_work_append_only_delete BEFORE DELETE ON session_work BEGIN SELECT RAISE(ABORT, 'session_work_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER charge_append_only_update BEFORE UPDATE ON charge BEGIN SELECT RAISE(ABORT, 'charge_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER charge_append_only_delete BEFORE DELETE ON charge BEGIN SELECT RAISE(ABORT, 'charge_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER claim_no_overlap_insert BEFORE INSERT ON claim BEGIN SELECT RAISE(ABORT, 'claim_no_overlap') WHERE EXISTS (
    SELECT 1 FROM claim AS other
    WHERE other.resource = NEW.resource AND other.id <> NEW.id
      AND other.starts_at_ms < NEW.ends_at_ms AND other.ends_at_ms > NEW.starts_at_ms
      AND other.starts_at_ms > NEW.starts_at_ms - 14400000
  ); END;
--> statement-breakpoint
CREATE TRIGGER claim_no_overlap_update BEFORE UPDATE ON claim BEGIN SELECT RAISE(ABORT, 'claim_no_overlap') WHERE EXISTS (
    SELECT 1 FROM claim AS other
    WHERE other.resource = NEW.resource AND other.id <> NEW.id
      AND other.starts_at_ms < NEW.ends_at_ms AND other.ends_at_ms > NEW.starts_at_ms
      AND other.starts_at_ms > NEW.starts_at_ms - 14400000
  ); END;
