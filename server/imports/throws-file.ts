import { CsvError, parse } from "csv-parse/sync";
import { IMPORT_COLUMNS, type ImportColumn, NEEDED_COLUMNS } from "@/server/domain/throwing/import-row";

/** The most rows one file can hold; common practice, no source. */
export const MOST_IMPORT_ROWS = 2000;

/** The longest one row can be, in characters: every column at its longest, with room. */
const MAX_ROW_CHARS = 4000;

/** One row of the file. `line`: where it ends in the file, counted from 1. */
export interface FileRow {
  line: number;
  cells: Record<ImportColumn, string>;
  /** Why it does not fit its columns, or null. */
  problem: string | null;
}

/** A file of past throwing as it was read, or why it cannot be. */
export type FileReading =
  | { ok: true; rows: FileRow[]; unknownColumns: string[] }
  | { ok: false; problem: string };

/** The file to fill in: the columns, and nothing else. */
export const IMPORT_TEMPLATE = `${IMPORT_COLUMNS.join(",")}\r\n`;

/**
 * Reads CSV text by RFC 4180, as spreadsheet programs write it: with or without a byte order mark, separated by commas,
 * semicolons or tabs, columns in any order. Empty lines are passed over.
 */
export function readThrowsFile(text: string): FileReading {
  const records = recordsOf(text);
  if (typeof records === "string") return { ok: false, problem: records };
  const [header, ...rest] = records;
  if (!header) return { ok: false, problem: "The file is empty." };
  const columns = header.record.map(columnNamed);
  const problem = headerProblem(columns) ?? rowsProblem(rest.length);
  if (problem) return { ok: false, problem };
  const unknownColumns = header.record.filter((name, at) => name.trim() !== "" && columns[at] === null);
  return { ok: true, unknownColumns, rows: rest.map((row) => rowOf(row, columns)) };
}

interface RawRecord {
  record: string[];
  info: { lines: number };
}

function recordsOf(text: string): RawRecord[] | string {
  try {
    return parse(text, {
      bom: true,
      delimiter: delimiterOf(text),
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
      skip_records_with_empty_values: true,
      max_record_size: MAX_ROW_CHARS,
    }) as unknown as RawRecord[];
  } catch (error) {
    if (error instanceof CsvError) return brokenLine(error);
    throw error;
  }
}

function brokenLine(error: CsvError): string {
  const line = Number(error.lines ?? 0);
  const what =
    error.code === "CSV_MAX_RECORD_SIZE" ? "it is too long" : "a quotation mark is open or out of place";
  return `The file cannot be read up to line ${line}: ${what}.`;
}

function delimiterOf(text: string): string {
  const [first = ""] = text.split(/\r?\n/, 1);
  const found = [",", ";", "\t"].map((sign) => ({ sign, count: first.split(sign).length }));
  return found.toSorted((a, b) => b.count - a.count)[0]?.sign ?? ",";
}

function columnNamed(name: string): ImportColumn | null {
  const plain = name.trim().toLowerCase();
  return IMPORT_COLUMNS.find((column) => column.toLowerCase() === plain) ?? null;
}

function headerProblem(columns: readonly (ImportColumn | null)[]): string | null {
  const missing = NEEDED_COLUMNS.filter((column) => !columns.includes(column));
  if (missing.length > 0) return `The first line names the columns; missing: ${missing.join(", ")}.`;
  const twice = columns.find((column, at) => column !== null && columns.indexOf(column) !== at);
  return twice ? `The column ${twice} is there twice.` : null;
}

function rowsProblem(count: number): string | null {
  if (count === 0) return "The file holds no rows below its columns.";
  return count > MOST_IMPORT_ROWS
    ? `The file holds ${count} rows; at most ${MOST_IMPORT_ROWS} at once.`
    : null;
}

function rowOf({ record, info }: RawRecord, columns: readonly (ImportColumn | null)[]): FileRow {
  const cells = Object.fromEntries(IMPORT_COLUMNS.map((column) => [column, ""])) as FileRow["cells"];
  columns.forEach((column, at) => {
    if (column) cells[column] = record[at] ?? "";
  });
  const problem =
    record.length > columns.length
      ? `It has ${record.length} fields, the first line ${columns.length}.`
      : null;
  return { line: info.lines, cells, problem };
}
