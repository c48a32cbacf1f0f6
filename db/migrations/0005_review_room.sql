CREATE TABLE `drawn_mark` (
	`id` text PRIMARY KEY NOT NULL,
	`review_id` text NOT NULL,
	`checkpoint_id` text,
	`clip_id` text NOT NULL,
	`frame` integer NOT NULL,
	`until_frame` integer,
	`guide` text NOT NULL,
	`points` text NOT NULL,
	`remark_id` text,
	`position` integer NOT NULL,
	FOREIGN KEY (`review_id`) REFERENCES `review`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`checkpoint_id`) REFERENCES `checkpoint`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`remark_id`) REFERENCES `remark`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "drawn_mark_guide" CHECK("drawn_mark"."guide" IN ('plumb', 'plate_line', 'level', 'ring', 'limbs', 'pencil', 'note')),
	CONSTRAINT "drawn_mark_points_json" CHECK(json_valid("drawn_mark"."points"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `drawn_mark_by_review` ON `drawn_mark` (`review_id`);--> statement-breakpoint
CREATE INDEX `drawn_mark_by_clip` ON `drawn_mark` (`clip_id`);--> statement-breakpoint
CREATE TABLE `measurement` (
	`id` text PRIMARY KEY NOT NULL,
	`athlete_id` text NOT NULL,
	`checkpoint_id` text,
	`review_id` text,
	`repeat_of_id` text,
	`clip_id` text NOT NULL,
	`frame` integer NOT NULL,
	`until_frame` integer,
	`view` text NOT NULL,
	`pitch_type` text,
	`kind` text NOT NULL,
	`points` text NOT NULL,
	`value` real NOT NULL,
	`coach_person_id` text NOT NULL,
	`measured_on` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`checkpoint_id`) REFERENCES `checkpoint`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`review_id`) REFERENCES `review`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "measurement_kind" CHECK("measurement"."kind" IN ('front_knee_flexion', 'trunk_tilt_forward', 'trunk_tilt_side', 'stride_length', 'stride_direction', 'shoulder_tilt', 'glove_height', 'head_travel', 'finish_hold')),
	CONSTRAINT "measurement_view" CHECK("measurement"."view" IN ('front', 'back', 'open_side', 'closed_side')),
	CONSTRAINT "measurement_points_json" CHECK(json_valid("measurement"."points"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `measurement_by_athlete` ON `measurement` (`athlete_id`,`kind`,`at_ms`);--> statement-breakpoint
CREATE INDEX `measurement_by_kind` ON `measurement` (`kind`,`view`);--> statement-breakpoint
CREATE INDEX `measurement_by_clip` ON `measurement` (`clip_id`);--> statement-breakpoint
CREATE INDEX `measurement_by_repeat` ON `measurement` (`repeat_of_id`);--> statement-breakpoint
CREATE TABLE `remeasure_request` (
	`id` text PRIMARY KEY NOT NULL,
	`measurement_id` text NOT NULL,
	`athlete_id` text NOT NULL,
	`asked_by_person_id` text NOT NULL,
	`for_person_id` text,
	`asked_at_ms` integer NOT NULL,
	`done_at_ms` integer,
	`done_measurement_id` text,
	FOREIGN KEY (`measurement_id`) REFERENCES `measurement`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `remeasure_request_open` ON `remeasure_request` (`done_at_ms`,`asked_at_ms`);--> statement-breakpoint
CREATE TABLE `review_template` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`from_age` integer NOT NULL,
	`to_age` integer NOT NULL,
	`lines` text NOT NULL,
	`active` integer DEFAULT true NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	CONSTRAINT "review_template_from_age" CHECK("review_template"."from_age" BETWEEN 4 AND 99),
	CONSTRAINT "review_template_to_age" CHECK("review_template"."to_age" BETWEEN 4 AND 99),
	CONSTRAINT "review_template_lines_json" CHECK(json_valid("review_template"."lines"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `voice_note` (
	`id` text PRIMARY KEY NOT NULL,
	`round_id` text NOT NULL,
	`athlete_id` text NOT NULL,
	`coach_person_id` text NOT NULL,
	`state` text NOT NULL,
	`storage_name` text NOT NULL,
	`content_type` text NOT NULL,
	`byte_count` integer NOT NULL,
	`sha256` text NOT NULL,
	`duration_ms` real NOT NULL,
	`created_at_ms` integer NOT NULL,
	FOREIGN KEY (`round_id`) REFERENCES `round`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`coach_person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "voice_note_state" CHECK("voice_note"."state" IN ('waiting', 'sent', 'gone'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `voice_note_by_round` ON `voice_note` (`round_id`);--> statement-breakpoint
CREATE INDEX `voice_note_by_state` ON `voice_note` (`state`,`created_at_ms`);--> statement-breakpoint
ALTER TABLE `checkpoint` ADD `measure` text;--> statement-breakpoint
ALTER TABLE `checkpoint` ADD `guide` text;--> statement-breakpoint
ALTER TABLE `clip` ADD `capture_source` text;--> statement-breakpoint
ALTER TABLE `clip` ADD `conversion` text;--> statement-breakpoint
ALTER TABLE `clip` ADD `conversion_share` real;--> statement-breakpoint
ALTER TABLE `correction` ADD `voice_id` text;--> statement-breakpoint
ALTER TABLE `keep` ADD `voice_id` text;
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = 'stride_length', `guide` = 'plate_line' WHERE `id` = 'stride-length';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = 'stride_direction', `guide` = 'plate_line' WHERE `id` = 'stride-direction';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = 'front_knee_flexion', `guide` = 'limbs' WHERE `id` = 'front-knee-bent';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = 'front_knee_flexion', `guide` = 'limbs' WHERE `id` = 'front-knee-firms';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = 'trunk_tilt_forward', `guide` = 'plumb' WHERE `id` = 'trunk-tilt-at-release';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = 'trunk_tilt_forward', `guide` = 'plumb' WHERE `id` = 'trunk-upright';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = 'shoulder_tilt', `guide` = 'level' WHERE `id` = 'elbow-shoulder-height';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = 'glove_height', `guide` = 'ring' WHERE `id` = 'glove-controlled';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = 'head_travel', `guide` = 'plumb' WHERE `id` = 'head-steady';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = 'finish_hold', `guide` = 'plumb' WHERE `id` = 'balanced-finish';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = NULL, `guide` = 'plate_line' WHERE `id` = 'closed-start';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = NULL, `guide` = 'level' WHERE `id` = 'gaze-on-plate';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = 'trunk_tilt_side', `guide` = 'plumb' WHERE `id` = 'balanced-lift';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = NULL, `guide` = 'plate_line' WHERE `id` = 'front-shoulder-closed';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = NULL, `guide` = 'plate_line' WHERE `id` = 'front-foot-closed';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = NULL, `guide` = 'limbs' WHERE `id` = 'loose-front-leg';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = NULL, `guide` = 'plumb' WHERE `id` = 'hips-lead';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = NULL, `guide` = 'limbs' WHERE `id` = 'arm-up-in-time';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = NULL, `guide` = 'level' WHERE `id` = 'hips-before-shoulders';
--> statement-breakpoint
UPDATE `checkpoint` SET `measure` = NULL, `guide` = 'ring' WHERE `id` = 'hand-hidden';
--> statement-breakpoint
CREATE TRIGGER measurement_append_only_update BEFORE UPDATE ON measurement BEGIN SELECT RAISE(ABORT, 'measurement_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER measurement_append_only_delete BEFORE DELETE ON measurement BEGIN SELECT RAISE(ABORT, 'measurement_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER drawn_mark_append_only_update BEFORE UPDATE ON drawn_mark BEGIN SELECT RAISE(ABORT, 'drawn_mark_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER drawn_mark_append_only_delete BEFORE DELETE ON drawn_mark BEGIN SELECT RAISE(ABORT, 'drawn_mark_append_only'); END;
