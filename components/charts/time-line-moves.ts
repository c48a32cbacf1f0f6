import { LANE_PX, type PlacedRow, ROW_AIR_PX } from "./time-line-layout";
import type { PlacedItem } from "./time-line-parts";

type Step = (rows: readonly PlacedRow[], row: number, index: number) => PlacedItem | undefined;

const STEPS: Record<string, Step> = {
  ArrowRight: (rows, row, index) => rows[row]?.items[index + 1],
  ArrowLeft: (rows, row, index) => rows[row]?.items[index - 1],
  Home: (rows, row) => rows[row]?.items[0],
  End: (rows, row) => rows[row]?.items.at(-1),
  ArrowDown: (rows, row, index) => nearestIn(rows.slice(row + 1), rows[row]?.items[index]),
  ArrowUp: (rows, row, index) => nearestIn(rows.slice(0, row).reverse(), rows[row]?.items[index]),
};

/** Whether a key leads from item to item. */
export const isMove = (key: string): boolean => key in STEPS;

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

/** The item that the first key leads to: the latest in the first row that holds anything; null on an empty line. */
export function entryItem(rows: readonly PlacedRow[]): string | null {
  return rows.find((row) => row.items.length > 0)?.items.at(-1)?.item.id ?? null;
}

function nearestIn(rows: readonly PlacedRow[], to: PlacedItem | undefined): PlacedItem | undefined {
  const items = rows.find((row) => row.items.length > 0)?.items ?? [];
  if (to === undefined) return undefined;
  return nearest(items, (each) => Math.abs(each.from - to.from));
}

/** A pointer nearer than this to an item means it. */
const REACH_PX = 12;

/**
 * The item that a place on the drawing means: what lies there with its words, else the nearest of its row and lane
 * within {@link REACH_PX}; null where there is none.
 */
export function itemAt(
  rows: readonly PlacedRow[],
  { xPx, yPx, widthPx }: { xPx: number; yPx: number; widthPx: number },
): string | null {
  const row = rows.find(({ topPx, heightPx }) => yPx >= topPx && yPx < topPx + heightPx);
  if (row === undefined) return null;
  const lane = Math.floor((yPx - row.topPx - ROW_AIR_PX) / LANE_PX);
  const own = row.items.filter(({ item, lane: of }) => item.kind !== "span" || of === Math.max(0, lane));
  const away = ({ taken: [from, to] }: PlacedItem) =>
    Math.max(0, from * widthPx - xPx, xPx - Math.max(to, from) * widthPx);
  const found = nearest(own, away);
  return found !== undefined && away(found) <= REACH_PX ? found.item.id : null;
}

function nearest(items: readonly PlacedItem[], away: (item: PlacedItem) => number): PlacedItem | undefined {
  let [found] = items;
  for (const each of items) if (found !== undefined && away(each) < away(found)) found = each;
  return found;
}
