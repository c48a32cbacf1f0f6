/**
 * How an arm stands on one day of the board. `thrown`, `outing` and `booked` are counted pitches, 0 where there are
 * none: reported for the day, planned for an outing, planned in booked sessions.
 */
export interface BoardCell {
  /** At most how many pitches more the book leaves, or what stands in place of a number. */
  limit: number | "resting" | "pain" | "no_published_limit" | "overridden" | "outs";
  /** At most how many outs more, where the book counts innings alone (`limit` is "outs"); else 0. */
  outs: number;
  thrown: number;
  outing: number;
  booked: number;
}

const LETTERS = { resting: "R", pain: "P", no_published_limit: "N", overridden: "V" } as const;

const LIMITS: Record<string, BoardCell["limit"]> = {
  ...{ R: "resting", P: "pain" },
  ...{ N: "no_published_limit", V: "overridden" },
};

/**
 * A row of cells as one short text, so that thousands of days travel as a few kilobytes.
 * @example encodeCells([{ limit: 34, outs: 0, thrown: 51, outing: 0, booked: 0 }]) // "34t51"
 */
export function encodeCells(cells: readonly BoardCell[]): string {
  return cells.map(encoded).join(" ");
}

function encoded({ limit, outs, thrown, outing, booked }: BoardCell): string {
  return firstOf(limit, outs) + counted("t", thrown) + counted("o", outing) + counted("b", booked);
}

function firstOf(limit: BoardCell["limit"], outs: number): string {
  if (typeof limit === "number") return String(limit);
  return limit === "outs" ? `I${outs}` : LETTERS[limit];
}

const counted = (letter: string, pitches: number) => (pitches > 0 ? letter + pitches : "");

const ENCODED = /^(\d+|I\d+|[RPNV])(?:t(\d+))?(?:o(\d+))?(?:b(\d+))?$/;

/**
 * The cells of a text of {@link encodeCells}.
 * @throws RangeError when the text is none (the caller's fault)
 */
export function decodeCells(text: string): BoardCell[] {
  return text.split(" ").map((each) => {
    const [, first = "", thrown, outing, booked] = ENCODED.exec(each) ?? [];
    if (first === "") throw new RangeError(`"${each}" is no day of an arms board.`);
    return {
      ...limitOf(first),
      ...{ thrown: Number(thrown ?? 0), outing: Number(outing ?? 0), booked: Number(booked ?? 0) },
    };
  });
}

function limitOf(first: string): Pick<BoardCell, "limit" | "outs"> {
  if (first.startsWith("I")) return { limit: "outs", outs: Number(first.slice(1)) };
  return { limit: LIMITS[first] ?? Number(first), outs: 0 };
}

/** Whether the book leaves nothing on the day: the arm rests, hurts, or its number is used up. */
export function isLimited({ limit, outs }: BoardCell): boolean {
  return limit === "resting" || limit === "pain" || limit === 0 || (limit === "outs" && outs === 0);
}

/**
 * In how many days from `today` (its place among the cells) the arm is first left without a pitch: 0 for today, null
 * for no such day among the cells.
 */
export function limitedInDays(cells: readonly BoardCell[], today: number): number | null {
  const at = cells.findIndex((cell, index) => index >= today && isLimited(cell));
  return at === -1 ? null : at - today;
}

/** The place of the first later cell that the book leaves a pitch on, or has no limit for; null for none. */
export function freeAfter(cells: readonly BoardCell[], at: number): number | null {
  const free = cells.findIndex((cell, index) => index > at && !isLimited(cell));
  return free === -1 ? null : free;
}

/**
 * The soonest limited first, an arm that hurts before one that rests, and those without a limited day last.
 * @returns negative when `a` comes first, 0 for the same place
 */
export function bySoonestLimit(a: readonly BoardCell[], b: readonly BoardCell[], today: number): number {
  return placeByLimit(a, today) - placeByLimit(b, today);
}

function placeByLimit(cells: readonly BoardCell[], today: number): number {
  const days = limitedInDays(cells, today);
  if (days === null) return cells.length;
  return cells[today]?.limit === "pain" ? -1 : days;
}
