/** A cell of the grid: `row` from 0; column 0 is the athlete's name, 1 and on are the days. */
export interface GridPlace {
  row: number;
  column: number;
}

/** How large the grid is: rows of athletes, and columns with the names. */
export interface GridSize {
  rows: number;
  columns: number;
}

/** How many rows a page key moves by; a trial by eye, no source. */
const PAGE_ROWS = 8;

const STEPS: Record<string, readonly [rows: number, columns: number]> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
  PageUp: [-PAGE_ROWS, 0],
  PageDown: [PAGE_ROWS, 0],
};

/**
 * Where a key leads from a cell, by the grid pattern of the ARIA authoring practices: arrows by one, Home and End to
 * the ends of the row (with Control of the grid), page keys by several rows. It never leaves the grid.
 * @returns null for a key that moves nothing
 * @example placeAfterKey({ row: 0, column: 3 }, "End", false, { rows: 2, columns: 30 }) // { row: 0, column: 29 }
 */
export function placeAfterKey(
  from: GridPlace,
  key: string,
  isWithControl: boolean,
  size: GridSize,
): GridPlace | null {
  const lastRow = size.rows - 1;
  const lastColumn = size.columns - 1;
  if (key === "Home") return { row: isWithControl ? 0 : from.row, column: 0 };
  if (key === "End") return { row: isWithControl ? lastRow : from.row, column: lastColumn };
  const step = isWithControl ? undefined : STEPS[key];
  if (!step) return null;
  const [rows, columns] = step;
  return { row: within(from.row + rows, lastRow), column: within(from.column + columns, lastColumn) };
}

function within(place: number, last: number): number {
  return Math.min(Math.max(place, 0), last);
}
