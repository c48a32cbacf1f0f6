CREATE TABLE `rule_book_confirmation` (
	`book_id` text NOT NULL,
	`confirmed_by_person_id` text NOT NULL,
	`confirmed_at_ms` integer NOT NULL
) STRICT;
--> statement-breakpoint
CREATE INDEX `rule_book_confirmation_by_book` ON `rule_book_confirmation` (`book_id`);--> statement-breakpoint
CREATE TABLE `rule_book_version` (
	`book_id` text NOT NULL,
	`version` integer NOT NULL,
	`name` text NOT NULL,
	`based_on_id` text NOT NULL,
	`document` text NOT NULL,
	`saved_by_person_id` text NOT NULL,
	`saved_at_ms` integer NOT NULL,
	PRIMARY KEY(`book_id`, `version`),
	CONSTRAINT "rule_book_version_number" CHECK("rule_book_version"."version" BETWEEN 1 AND 100000),
	CONSTRAINT "rule_book_version_json" CHECK(json_valid("rule_book_version"."document"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `athlete_team` (
	`id` text PRIMARY KEY NOT NULL,
	`athlete_id` text NOT NULL,
	`name` text NOT NULL,
	`rule_book_id` text NOT NULL,
	`added_by_person_id` text NOT NULL,
	`added_at_ms` integer NOT NULL,
	`ended_at_ms` integer,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "athlete_team_name" CHECK(length("athlete_team"."name") BETWEEN 1 AND 80)
) STRICT;
--> statement-breakpoint
CREATE INDEX `athlete_team_by_athlete` ON `athlete_team` (`athlete_id`);--> statement-breakpoint
CREATE TABLE `limit_override` (
	`id` text PRIMARY KEY NOT NULL,
	`athlete_id` text NOT NULL,
	`day` text NOT NULL,
	`pitches` integer NOT NULL,
	`reason_remark_id` text NOT NULL,
	`by_person_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`athlete_id`) REFERENCES `athlete`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`reason_remark_id`) REFERENCES `remark`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "limit_override_pitches" CHECK("limit_override"."pitches" BETWEEN 0 AND 400),
	CONSTRAINT "limit_override_day" CHECK("limit_override"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
) STRICT;
--> statement-breakpoint
CREATE INDEX `limit_override_by_athlete` ON `limit_override` (`athlete_id`,`day`);--> statement-breakpoint
ALTER TABLE `academy` ADD `counted_kinds` text DEFAULT '["bullpen","lesson"]' NOT NULL CONSTRAINT "academy_counted_kinds_json" CHECK(json_valid("counted_kinds"));
--> statement-breakpoint
ALTER TABLE `session_log` ADD `effort` integer CONSTRAINT "session_log_effort" CHECK("effort" BETWEEN 0 AND 10);
--> statement-breakpoint
ALTER TABLE `planned_outing` ADD `team_id` text REFERENCES athlete_team(id);
--> statement-breakpoint
ALTER TABLE `throw_entry` ADD `outs` integer CONSTRAINT "throw_entry_outs" CHECK("outs" BETWEEN 0 AND 60);
--> statement-breakpoint
ALTER TABLE `throw_entry` ADD `innings_caught` integer CONSTRAINT "throw_entry_innings_caught" CHECK("innings_caught" BETWEEN 0 AND 20);
--> statement-breakpoint
ALTER TABLE `throw_entry` ADD `pitches_at_last_batter` integer CONSTRAINT "throw_entry_last_batter" CHECK("pitches_at_last_batter" BETWEEN 0 AND "pitches");
--> statement-breakpoint
ALTER TABLE `throw_entry` ADD `intentional_walks` integer DEFAULT 0 NOT NULL CONSTRAINT "throw_entry_intentional_walks" CHECK("intentional_walks" BETWEEN 0 AND 20);
--> statement-breakpoint
ALTER TABLE `throw_entry` ADD `team_id` text REFERENCES athlete_team(id);
--> statement-breakpoint
ALTER TABLE `throw_entry` ADD `opponent_remark_id` text REFERENCES remark(id);
--> statement-breakpoint
ALTER TABLE `throw_entry` ADD `import_key` text;
--> statement-breakpoint
CREATE UNIQUE INDEX `throw_entry_imported_once` ON `throw_entry` (`import_key`);
--> statement-breakpoint
CREATE TRIGGER rule_book_version_append_only_update BEFORE UPDATE ON rule_book_version BEGIN SELECT RAISE(ABORT, 'rule_book_version_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER rule_book_version_append_only_delete BEFORE DELETE ON rule_book_version BEGIN SELECT RAISE(ABORT, 'rule_book_version_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER rule_book_confirmation_append_only_update BEFORE UPDATE ON rule_book_confirmation BEGIN SELECT RAISE(ABORT, 'rule_book_confirmation_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER rule_book_confirmation_append_only_delete BEFORE DELETE ON rule_book_confirmation BEGIN SELECT RAISE(ABORT, 'rule_book_confirmation_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER limit_override_append_only_update BEFORE UPDATE ON limit_override BEGIN SELECT RAISE(ABORT, 'limit_override_append_only'); END;
--> statement-breakpoint
CREATE TRIGGER limit_override_append_only_delete BEFORE DELETE ON limit_override BEGIN SELECT RAISE(ABORT, 'limit_override_append_only'); END;
