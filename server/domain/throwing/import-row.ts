import { type CalendarDay, isCalendarDay } from "@/server/domain/time/calendar-day";
import { startsLikeFormula } from "../text/starts-like-formula";
import { outsOfInnings } from "./innings";
import { entryRefusalInWords } from "./refusal-in-words";
import { THROW_KINDS, type ThrowKind } from "./throw-entry";
import { THROW_KIND_WORDS } from "./throw-words";
import { type EntryBounds, entryRefusals } from "./validate-entry";
import {
  type GameDetails,
  gameProblem,
  hasGameDetails,
  NO_GAME,
  TEAM_NAME_MAX_LENGTH,
} from "./validate-game";

/** The columns of a file of past throwing, in the template's order. The first three are needed. */
export const IMPORT_COLUMNS = [
  "Day",
  "Kind",
  "Pitches",
  "Innings pitched",
  "Innings caught",
  "Pitches before last batter",
  "Intentional walks",
  "Team",
  "Against",
  "Note",
] as const;

/** One of {@link IMPORT_COLUMNS}. */
export type ImportColumn = (typeof IMPORT_COLUMNS)[number];

/** The columns without which there is nothing to log. */
export const NEEDED_COLUMNS = ["Day", "Kind", "Pitches"] as const satisfies readonly ImportColumn[];

/** In which order a day with slashes is written; one with dashes is always year, month, day. */
export const DAY_ORDERS = ["month_first", "day_first"] as const;

/** One of {@link DAY_ORDERS}. */
export type DayOrder = (typeof DAY_ORDERS)[number];

/** What a row is held against. `teams`: the athlete's own, ended ones too. */
export interface ImportBounds extends EntryBounds {
  dayOrder: DayOrder;
  teams: readonly { id: string; name: string }[];
}

/** A row that can be logged. */
export interface ReadRow {
  thrownOn: CalendarDay;
  kind: ThrowKind;
  pitches: number;
  game: (GameDetails & { opponent: string }) | null;
  note: string;
}

/** The longest note of a row, as of an entry typed in. */
export const NOTE_MAX_LENGTH = 1000;

/** Everything that is wrong with a row, or the row. */
export type RowReading = { ok: true; row: ReadRow } | { ok: false; problems: string[] };

/**
 * Reads one row of a file of past throwing.
 * @param cells text by column; a column that the file lacks is empty
 * @returns all that is wrong with it, a sentence each, or what can be logged
 */
export function readRow(cells: Readonly<Record<ImportColumn, string>>, bounds: ImportBounds): RowReading {
  const problems: string[] = [];
  const thrownOn = dayWritten(cells.Day, bounds.dayOrder);
  const kind = kindWritten(cells.Kind);
  const pitches = countWritten(cells.Pitches);
  if (thrownOn === null) problems.push(`Day "${shown(cells.Day)}" is no day: write it as 2026-04-18.`);
  if (kind === null) problems.push(`Kind "${shown(cells.Kind)}" is not one of: ${KIND_LIST}.`);
  if (pitches === null) problems.push(`Pitches "${shown(cells.Pitches)}" is not a whole number.`);
  problems.push(...textProblems(cells));
  const game = gameWritten(cells, bounds.teams, problems);
  if (thrownOn === null || kind === null || pitches === null || problems.length > 0) {
    return { ok: false, problems };
  }
  const row = { thrownOn, kind, pitches, game: hasSaid(game) ? game : null, note: cells.Note.trim() };
  const wrong = [...entryRefusals(row, bounds).map(entryRefusalInWords), ...gameProblems(row, bounds)];
  return wrong.length > 0 ? { ok: false, problems: wrong } : { ok: true, row };
}

const KIND_LIST = THROW_KINDS.map((kind) => THROW_KIND_WORDS[kind]).join(", ");

function gameProblems({ game, kind, pitches }: ReadRow, { teams }: ImportBounds): string[] {
  if (game === null) return [];
  if (!hasGameDetails(kind) && game.opponent !== "") return ["Innings, walks and a team belong to a game."];
  const problem = gameProblem(
    { ...game, kind, pitches },
    teams.map((team) => team.id),
  );
  return problem ? [problem] : [];
}

function hasSaid({ intentionalWalks, opponent, ...facts }: GameDetails & { opponent: string }): boolean {
  return intentionalWalks > 0 || opponent !== "" || Object.values(facts).some((fact) => fact !== null);
}

/**
 * A day as it is written in a file, or null.
 * @example dayWritten("4/18/2026", "month_first") // "2026-04-18"
 */
export function dayWritten(text: string, order: DayOrder): CalendarDay | null {
  const typed = text.trim();
  if (isCalendarDay(typed)) return typed;
  const [, first = "", second = "", year = ""] = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/.exec(typed) ?? [];
  const [month, dayOfMonth] = order === "month_first" ? [first, second] : [second, first];
  const day = `${year}-${month.padStart(2, "0")}-${dayOfMonth.padStart(2, "0")}`;
  return isCalendarDay(day) ? day : null;
}

function kindWritten(text: string): ThrowKind | null {
  const plain = (words: string) => words.toLowerCase().replaceAll(/[^a-z]/g, "");
  const typed = plain(text);
  return (
    THROW_KINDS.find((kind) => [kind, THROW_KIND_WORDS[kind]].some((name) => plain(name) === typed)) ?? null
  );
}

function countWritten(text: string): number | null {
  return /^-?\d{1,6}$/.test(text.trim()) ? Number(text.trim()) : null;
}

function gameWritten(
  cells: Readonly<Record<ImportColumn, string>>,
  teams: ImportBounds["teams"],
  problems: string[],
): GameDetails & { opponent: string } {
  const read = <Value>(column: ImportColumn, parse: (text: string) => Value | null, sentence: string) => {
    const text = cells[column].trim();
    const value = text === "" ? null : parse(text);
    if (text !== "" && value === null) problems.push(`${column} "${shown(text)}" ${sentence}`);
    return value;
  };
  const teamOf = (name: string) =>
    teams.find((team) => team.name.toLowerCase() === name.toLowerCase())?.id ?? null;
  return {
    ...NO_GAME,
    outs: read("Innings pitched", outsOfInnings, "is not whole innings and thirds, as 2 or 2 1/3."),
    inningsCaught: read("Innings caught", countWritten, "is not a whole number."),
    pitchesAtLastBatter: read("Pitches before last batter", countWritten, "is not a whole number."),
    intentionalWalks: read("Intentional walks", countWritten, "is not a whole number.") ?? 0,
    teamId: read("Team", teamOf, "is not a team of this athlete: add it first, or leave it out."),
    opponent: cells.Against.trim(),
  };
}

function textProblems(cells: Readonly<Record<ImportColumn, string>>): string[] {
  return (["Against", "Note"] as const).flatMap((column) => {
    const text = cells[column];
    const most = column === "Note" ? NOTE_MAX_LENGTH : TEAM_NAME_MAX_LENGTH;
    if (startsLikeFormula(text))
      return [`${column} starts like a formula: take "${shown(text.trim()).slice(0, 1)}" off its front.`];
    return text.trim().length > most ? [`${column} fits in ${most} characters.`] : [];
  });
}

function shown(text: string): string {
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}
