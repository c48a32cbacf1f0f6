import { sql } from "drizzle-orm";
import { index, integer, real, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import {
  CAPTURE_SOURCES,
  CLIP_PARTS,
  CLIP_STATES,
  CONVERSION_STATES,
  PITCH_TYPES,
} from "../../server/domain/clips/clip";
import { CAMERA_VIEWS } from "../../server/domain/mechanics/delivery";
import { day, flag, holds, instant, isDay, oneOf, within } from "./columns";
import { athlete, person } from "./people";
import { round } from "./rounds";

/**
 * One video. `waiting` is uploaded and probed but not yet sent with a round; `drawing` is a demo clip on its way.
 * Only the copy without metadata is kept; `storageName` names it inside the clip folder.
 */
export const clip = sqliteTable(
  "clip",
  {
    id: text("id").primaryKey(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    roundId: text("round_id").references(() => round.id),
    part: text("part", { enum: CLIP_PARTS }),
    state: text("state", { enum: CLIP_STATES }).notNull(),
    view: text("view", { enum: CAMERA_VIEWS }),
    pitchType: text("pitch_type", { enum: PITCH_TYPES }),
    pitchesThrown: integer("pitches_thrown"),
    alreadyOnLog: flag("already_on_log"),
    note: text("note"),
    filmedOn: day("filmed_on"),
    position: integer("position").notNull().default(0),
    uploadId: text("upload_id"),
    uploadedByPersonId: text("uploaded_by_person_id").references(() => person.id),
    createdAtMs: instant("created_at_ms").notNull(),
    retainUntil: day("retain_until").notNull(),
    storageName: text("storage_name"),
    contentType: text("content_type"),
    byteCount: integer("byte_count"),
    sha256: text("sha256"),
    durationMs: real("duration_ms"),
    widthPx: integer("width_px"),
    heightPx: integer("height_px"),
    rotationDeg: integer("rotation_deg"),
    codec: text("codec"),
    /** Frames a second as recorded; null while nobody has said. */
    capturedFps: real("captured_fps"),
    captureSource: text("capture_source", { enum: CAPTURE_SOURCES }),
    conversion: text("conversion", { enum: CONVERSION_STATES }),
    /** How much of the copy is made, 0 to 1. */
    conversionShare: real("conversion_share"),
    frameCount: integer("frame_count"),
    /** JSON array of every frame's time in milliseconds, in shown order. */
    frameTimesMs: text("frame_times_ms"),
    hasPoster: flag("has_poster").notNull().default(false),
  },
  (table) => [
    /* The room and the family's reading list the clips of a round. */
    index("clip_by_round").on(table.roundId, table.position),
    index("clip_by_athlete").on(table.athleteId),
    /* The retention job asks for what is past its day. */
    index("clip_by_retention").on(table.state, table.retainUntil),
    uniqueIndex("clip_upload_once").on(table.uploadId),
    oneOf("clip_state", table.state, CLIP_STATES),
    oneOf("clip_part", table.part, CLIP_PARTS),
    oneOf("clip_view", table.view, CAMERA_VIEWS),
    oneOf("clip_pitch_type", table.pitchType, PITCH_TYPES),
    within("clip_pitches_thrown", table.pitchesThrown, 0, 400),
    within("clip_byte_count", table.byteCount, 1, 1_000_000_000),
    isDay("clip_retain_until", table.retainUntil),
    holds("clip_frames_json", sql`${table.frameTimesMs} IS NULL OR json_valid(${table.frameTimesMs})`),
    holds(
      "clip_ready_is_whole",
      sql`${table.state} <> 'ready' OR (${table.roundId} IS NOT NULL AND ${table.storageName} IS NOT NULL AND ${table.frameCount} > 0)`,
    ),
  ],
);

/** Append-only: staff who opened a clip of an athlete that another coach looks after. */
export const clipView = sqliteTable(
  "clip_view",
  {
    id: text("id").primaryKey(),
    clipId: text("clip_id").notNull(),
    personId: text("person_id").notNull(),
    atMs: instant("at_ms").notNull(),
  },
  (table) => [index("clip_view_by_clip").on(table.clipId, table.atMs)],
);
