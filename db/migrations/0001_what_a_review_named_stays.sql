CREATE TRIGGER keep_stays_update BEFORE UPDATE OF id, review_id, checkpoint_id, phase, clip_id, frame, position ON keep BEGIN SELECT RAISE(ABORT, 'keep_stays'); END;
--> statement-breakpoint
CREATE TRIGGER keep_stays_delete BEFORE DELETE ON keep BEGIN SELECT RAISE(ABORT, 'keep_stays'); END;
--> statement-breakpoint
CREATE TRIGGER correction_stays_update BEFORE UPDATE OF id, athlete_id, review_id, round_id, checkpoint_id, phase, clip_id, frame, position, given_at_ms ON correction BEGIN SELECT RAISE(ABORT, 'correction_stays'); END;
--> statement-breakpoint
CREATE TRIGGER correction_stays_delete BEFORE DELETE ON correction BEGIN SELECT RAISE(ABORT, 'correction_stays'); END;
