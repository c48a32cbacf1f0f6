PRAGMA foreign_keys=OFF;--> statement-breakpoint
CREATE TABLE `__new_notice` (
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
	CONSTRAINT "notice_kind" CHECK("__new_notice"."kind" IN ('invitation', 'reset', 'clip_received', 'round_taken', 'retake_asked', 'review_sent', 'addendum_sent', 'answer_received', 'check_sent', 'round_lapsed', 'round_withdrawn', 'session_booked', 'session_moved', 'session_cancelled', 'session_logged', 'session_without_room', 'pain_reported', 'pain_cleared', 'limit_overridden', 'consent_changed')),
	CONSTRAINT "notice_state" CHECK("__new_notice"."state" IN ('waiting', 'sent', 'kept', 'failed'))
) STRICT;
--> statement-breakpoint
INSERT INTO `__new_notice`("id", "kind", "to_person_id", "about_athlete_id", "subject", "body", "state", "attempts", "next_try_at_ms", "last_error", "created_at_ms", "sent_at_ms") SELECT "id", "kind", "to_person_id", "about_athlete_id", "subject", "body", "state", "attempts", "next_try_at_ms", "last_error", "created_at_ms", "sent_at_ms" FROM `notice`;--> statement-breakpoint
DROP TABLE `notice`;--> statement-breakpoint
ALTER TABLE `__new_notice` RENAME TO `notice`;--> statement-breakpoint
PRAGMA foreign_keys=ON;--> statement-breakpoint
CREATE INDEX `notice_by_state` ON `notice` (`state`,`next_try_at_ms`);--> statement-breakpoint
CREATE INDEX `notice_by_time` ON `notice` (`created_at_ms`);