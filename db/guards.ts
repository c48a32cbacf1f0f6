/** A trigger that the records rest on; boot refuses to go on without it. */
export interface GuardTrigger {
  name: string;
  sql: string;
}

/** Tables whose rows are never changed or removed: a correction is a new row. */
export const APPEND_ONLY_TABLES = [
  "consent",
  "audit_log",
  "clip_view",
  "round_event",
  "review",
  "addendum",
  "event_mark",
  "judgement",
  "measurement",
  "drawn_mark",
  "correction_event",
  "throw_entry",
  "pain_report",
  "pain_clearance",
  "limit_override",
  "rule_book_version",
  "rule_book_confirmation",
  "check_in",
  "session_log",
  "session_work",
  "charge",
  "blind_rating",
  "season_report",
] as const;

/**
 * Rows that stay once written, and of them these columns: what a sent review named, and where. Their words can be erased,
 * and a correction's standing is the fold of its events.
 */
export const STAYING_COLUMNS = {
  keep: ["id", "review_id", "checkpoint_id", "phase", "clip_id", "frame", "position"],
  correction: [
    ...["id", "athlete_id", "review_id", "round_id", "checkpoint_id", "phase"],
    ...["clip_id", "frame", "position", "given_at_ms", "wanted", "wanted_to"],
  ],
} as const;

const CLAIM_OVERLAP = `SELECT RAISE(ABORT, 'claim_no_overlap') WHERE EXISTS (
    SELECT 1 FROM claim AS other
    WHERE other.resource = NEW.resource AND other.id <> NEW.id
      AND other.starts_at_ms < NEW.ends_at_ms AND other.ends_at_ms > NEW.starts_at_ms
      AND other.starts_at_ms > NEW.starts_at_ms - 14400000
  );`;

/** Every guard, in the order they are created. The search bound of the claims is the longest session, 240 min. */
export const GUARD_TRIGGERS: readonly GuardTrigger[] = [
  ...APPEND_ONLY_TABLES.flatMap((table) => [
    {
      name: `${table}_append_only_update`,
      sql: `CREATE TRIGGER ${table}_append_only_update BEFORE UPDATE ON ${table} BEGIN SELECT RAISE(ABORT, '${table}_append_only'); END`,
    },
    {
      name: `${table}_append_only_delete`,
      sql: `CREATE TRIGGER ${table}_append_only_delete BEFORE DELETE ON ${table} BEGIN SELECT RAISE(ABORT, '${table}_append_only'); END`,
    },
  ]),
  {
    name: "claim_no_overlap_insert",
    sql: `CREATE TRIGGER claim_no_overlap_insert BEFORE INSERT ON claim BEGIN ${CLAIM_OVERLAP} END`,
  },
  {
    name: "claim_no_overlap_update",
    sql: `CREATE TRIGGER claim_no_overlap_update BEFORE UPDATE ON claim BEGIN ${CLAIM_OVERLAP} END`,
  },
  ...Object.entries(STAYING_COLUMNS).flatMap(([table, columns]) => [
    {
      name: `${table}_stays_update`,
      sql: `CREATE TRIGGER ${table}_stays_update BEFORE UPDATE OF ${columns.join(", ")} ON ${table} BEGIN SELECT RAISE(ABORT, '${table}_stays'); END`,
    },
    {
      name: `${table}_stays_delete`,
      sql: `CREATE TRIGGER ${table}_stays_delete BEFORE DELETE ON ${table} BEGIN SELECT RAISE(ABORT, '${table}_stays'); END`,
    },
  ]),
];
