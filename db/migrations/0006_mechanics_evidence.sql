CREATE TABLE `blind_item` (
	`id` text PRIMARY KEY NOT NULL,
	`set_id` text NOT NULL,
	`position` integer NOT NULL,
	`athlete_id` text NOT NULL,
	`checkpoint_id` text NOT NULL,
	`clip_id` text NOT NULL,
	`frame` integer NOT NULL,
	`view` text NOT NULL,
	`kind` text NOT NULL,
	FOREIGN KEY (`set_id`) REFERENCES `blind_set`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`checkpoint_id`) REFERENCES `checkpoint`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "blind_item_view" CHECK("blind_item"."view" IN ('front', 'back', 'open_side', 'closed_side')),
	CONSTRAINT "blind_item_kind" CHECK("blind_item"."kind" IN ('judgement', 'front_knee_flexion', 'trunk_tilt_forward', 'trunk_tilt_side', 'stride_length', 'stride_direction', 'shoulder_tilt', 'glove_height', 'head_travel', 'finish_hold')),
	CONSTRAINT "blind_item_frame" CHECK("blind_item"."frame" BETWEEN 0 AND 1000000)
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `blind_item_place` ON `blind_item` (`set_id`,`position`);--> statement-breakpoint
CREATE INDEX `blind_item_by_athlete` ON `blind_item` (`athlete_id`);--> statement-breakpoint
CREATE TABLE `blind_rating` (
	`id` text PRIMARY KEY NOT NULL,
	`item_id` text NOT NULL,
	`coach_person_id` text NOT NULL,
	`value` real,
	`points` text NOT NULL,
	`rated_at_ms` integer NOT NULL,
	FOREIGN KEY (`item_id`) REFERENCES `blind_item`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "blind_rating_points_json" CHECK(json_valid("blind_rating"."points"))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `blind_rating_once` ON `blind_rating` (`item_id`,`coach_person_id`);--> statement-breakpoint
CREATE TABLE `blind_set` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`made_by_person_id` text NOT NULL,
	`made_at_ms` integer NOT NULL,
	`closed_at_ms` integer
) STRICT;
--> statement-breakpoint
CREATE TABLE `report_link` (
	`id` text PRIMARY KEY NOT NULL,
	`athlete_id` text NOT NULL,
	`from_on` text NOT NULL,
	`to_on` text NOT NULL,
	`token_hash` text NOT NULL,
	`made_by_person_id` text NOT NULL,
	`made_at_ms` integer NOT NULL,
	`expires_at_ms` integer NOT NULL,
	`revoked_at_ms` integer,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "report_link_span" CHECK("report_link"."from_on" < "report_link"."to_on" AND "report_link"."made_at_ms" < "report_link"."expires_at_ms")
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `report_link_by_token` ON `report_link` (`token_hash`);--> statement-breakpoint
CREATE INDEX `report_link_by_athlete` ON `report_link` (`athlete_id`,`from_on`);--> statement-breakpoint
CREATE TABLE `season_report` (
	`id` text PRIMARY KEY NOT NULL,
	`athlete_id` text NOT NULL,
	`from_on` text NOT NULL,
	`to_on` text NOT NULL,
	`focus_remark_id` text,
	`written_by_person_id` text NOT NULL,
	`written_at_ms` integer NOT NULL,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`focus_remark_id`) REFERENCES `remark`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "season_report_span" CHECK("season_report"."from_on" < "season_report"."to_on")
) STRICT;
--> statement-breakpoint
CREATE INDEX `season_report_by_athlete` ON `season_report` (`athlete_id`,`from_on`,`written_at_ms`);--> statement-breakpoint
ALTER TABLE `checkpoint` ADD `wanted` text;--> statement-breakpoint
ALTER TABLE `checkpoint` ADD `wanted_to` real;--> statement-breakpoint
ALTER TABLE `correction` ADD `wanted` text;--> statement-breakpoint
ALTER TABLE `correction` ADD `wanted_to` real;--> statement-breakpoint
ALTER TABLE `session_log` ADD `strikes` integer;--> statement-breakpoint
ALTER TABLE `session_log` ADD `top_speed` real;--> statement-breakpoint
ALTER TABLE `session_log` ADD `speed_unit` text;--> statement-breakpoint
UPDATE `checkpoint` SET `wanted` = 'less' WHERE `id` = 'head-steady' AND `measure` = 'head_travel';
--> statement-breakpoint
UPDATE `checkpoint` SET `wanted` = 'more' WHERE `id` = 'balanced-finish' AND `measure` = 'finish_hold';
--> statement-breakpoint
CREATE TRIGGER blind_rating_append_only_update BEFORE UPDATE ON blind_rating BEGIN SELECT RAISE(ABORT, 'blind_rating_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER blind_rating_append_only_delete BEFORE DELETE ON blind_rating BEGIN SELECT RAISE(ABORT, 'blind_rating_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER season_report_append_only_update BEFORE UPDATE ON season_report BEGIN SELECT RAISE(ABORT, 'season_report_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER season_report_append_only_delete BEFORE DELETE ON season_report BEGIN SELECT RAISE(ABORT, 'season_report_append_only'); END;
--> statement-breakpoint
DROP TRIGGER correction_stays_update;
--> statement-breakpoint
CREATE TRIGGER correction_stays_update BEFORE UPDATE OF id, athlete_id, review_id, round_id, checkpoint_id, phase, clip_id, frame, position, given_at_ms, wanted, wanted_to ON correction BEGIN SELECT RAISE(ABORT, 'correction_stays'); END;
