import type { PlacedItem, PlacedRow } from "./time-line-layout";

type Step = (rows: readonly PlacedRow[], row: number, index: number) => PlacedItem | undefined;

const STEPS: Record<string, Step> = {
  ArrowRight: (rows, row, index) => rows[row]?.items[index + 1],
  ArrowLeft: (rows, row, index) => rows[row]?.items[index - 1],
  Home: (rows, row) => rows[row]?.items[0],
  End: (rows, row) => rows[row]?.items.at(-1),
  ArrowDown: (rows, row, index) => nearestIn(rows.slice(row + 1), rows[row]?.items[index]),
  ArrowUp: (rows, row, index) => nearestIn(rows.slice(0, row).reverse(), rows[row]?.items[index]),
};

/**
 * The item that a key leads to from another: left and right along a row, up and down to what begins nearest in the
 * next row that holds anything, Home and End to a row's ends.
 * @returns null for any other key, and at an edge
 */
export function itemAfterKey(rows: readonly PlacedRow[], fromId: string, key: string): string | null {
  const step = STEPS[key];
  if (step === undefined) return null;
  for (const [rowIndex, row] of rows.entries()) {
    const index = row.items.findIndex(({ item }) => item.id === fromId);
    if (index !== -1) return step(rows, rowIndex, index)?.item.id ?? null;
  }
  return null;
}

/** The item that the Tab key enters by: the latest in the first row that holds anything; null on an empty line. */
export function entryItem(rows: readonly PlacedRow[]): string | null {
  return rows.find((row) => row.items.length > 0)?.items.at(-1)?.item.id ?? null;
}

function nearestIn(rows: readonly PlacedRow[], to: PlacedItem | undefined): PlacedItem | undefined {
  const items = rows.find((row) => row.items.length > 0)?.items ?? [];
  if (to === undefined) return undefined;
  return [...items].sort((a, b) => Math.abs(a.from - to.from) - Math.abs(b.from - to.from))[0];
}
