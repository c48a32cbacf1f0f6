import { z } from "zod";
import { tellOfSessionsWithoutRoom } from "@/server/data/flag-sessions";
import { teamsOf } from "@/server/data/teams";
import { knownLog } from "@/server/data/throwing-log";
import { Refusal } from "@/server/domain/errors/refusal";
import { type FreshRow, planImport } from "@/server/domain/throwing/import-plan";
import { DAY_ORDERS, readRow } from "@/server/domain/throwing/import-row";
import { THROW_KINDS } from "@/server/domain/throwing/throw-entry";
import { PLAUSIBLE_MAX_PITCHES } from "@/server/domain/throwing/validate-entry";
import { readThrowsFile } from "@/server/imports/throws-file";
import type { Scope } from "../context";
import { noteAct } from "../note-act";
import { appendThrows } from "./append-throws";

/** The longest file, in characters: more rows than one file can hold, at their usual length. */
export const MAX_FILE_CHARS = 100_000;

/** A file of past throwing of one athlete. */
export const fileInput = z.strictObject({
  athleteId: z.string().min(1).max(60),
  csv: z
    .string()
    .min(1, "The file is empty.")
    .max(MAX_FILE_CHARS, "The file is too long: part it into several."),
  dayOrder: z.enum(DAY_ORDERS),
});

const shownRow = z.strictObject({
  line: z.int(),
  thrownOn: z.string(),
  kind: z.enum(THROW_KINDS),
  pitches: z.int(),
});

/** What a file would do: rows to be added, rows the log holds already, rows that are wrong with all that is. */
export const filePreview = z.strictObject({
  fresh: z.array(shownRow),
  there: z.array(shownRow),
  bad: z.array(z.strictObject({ line: z.int(), problems: z.array(z.string()) })),
  unknownColumns: z.array(z.string()),
});

type FileInput = z.output<typeof fileInput>;

interface Plan {
  fresh: FreshRow[];
  preview: z.output<typeof filePreview>;
}

/** What a file would do to the log of the athlete in hand. @throws Refusal when it cannot be read at all */
export async function previewFile(scope: Scope, input: FileInput): Promise<z.output<typeof filePreview>> {
  return (await planOf(scope, input)).preview;
}

/**
 * Adds the new rows of a file to the log of the athlete in hand, in one unit of work.
 * @param input.withoutBad that rows which are wrong are to be left out was asked for
 * @throws Refusal when the file cannot be read, or holds wrong rows and that was not asked for: nothing is written
 */
export async function addFile(
  scope: Scope,
  { withoutBad, ...input }: FileInput & { withoutBad: boolean },
): Promise<{ added: number; there: number; leftOut: number }> {
  const { db, athlete, nowMs } = scope;
  const { fresh, preview } = await planOf(scope, input);
  if (preview.bad.length > 0 && !withoutBad) {
    const lines = preview.bad.map(({ line }) => line).slice(0, 10);
    refuse(`These lines are wrong: ${lines.join(", ")}${preview.bad.length > 10 ? " and more" : ""}.`);
  }
  for (const { row, importKey } of fresh) await appendThrows(scope, { ...row, importKey });
  const counts = { added: fresh.length, there: preview.there.length, leftOut: preview.bad.length };
  if (fresh.length > 0) {
    await noteAct(scope, "throws.imported", athlete.athleteId, counts);
    await tellOfSessionsWithoutRoom(db, athlete.athleteId, nowMs);
  }
  return counts;
}

async function planOf({ db, athlete, today }: Scope, { csv, dayOrder }: FileInput): Promise<Plan> {
  const file = readThrowsFile(csv);
  if (!file.ok) refuse(file.problem);
  const { athleteId, bornOn } = athlete;
  const teams = await teamsOf(db, athleteId);
  const bounds = { bornOn, today, plausibleMaxPitches: PLAUSIBLE_MAX_PITCHES, dayOrder, teams };
  const read = file.rows.map(({ line, cells, problem }) => ({
    line,
    reading: problem ? { ok: false as const, problems: [problem] } : readRow(cells, bounds),
  }));
  const good = read.flatMap(({ line, reading }) => (reading.ok ? [{ line, row: reading.row }] : []));
  const bad = read.flatMap(({ line, reading }) => (reading.ok ? [] : [{ line, problems: reading.problems }]));
  const { fresh, there } = planImport(athleteId, good, await knownLog(db, athleteId));
  const { unknownColumns } = file;
  return { fresh, preview: { fresh: fresh.map(inShort), there: there.map(inShort), bad, unknownColumns } };
}

function inShort({ line, row }: { line: number; row: FreshRow["row"] }): z.output<typeof shownRow> {
  return { line, thrownOn: row.thrownOn, kind: row.kind, pitches: row.pitches };
}

function refuse(why: string): never {
  throw new Refusal({ reason: "throw_entry_invalid", why });
}
