/** A wall clock told minute by minute by Intl alone: the slow, plain reading that the finder is held against. */
export interface MinuteClock {
  zone: string;
  fromMs: number;
  /** Wall time of each minute from `fromMs` on, in minutes since 1970-01-01 00:00 on the wall. */
  walls: readonly number[];
  /** The first minute that shows each wall time. */
  firstShown: ReadonlyMap<number, number>;
}

const MINUTE_MS = 60_000;

/** Clocks have changed on whole quarters of an hour since 1972, so Intl is asked once for each. */
const QUARTER_MIN = 15;

/** The clock of a zone over `[fromMs, toMs)`. */
export function minuteClock(zone: string, fromMs: number, toMs: number): MinuteClock {
  const format = new Intl.DateTimeFormat("sv-SE", { timeZone: zone, dateStyle: "short", timeStyle: "short" });
  const walls: number[] = [];
  const firstShown = new Map<number, number>();
  for (let atMs = fromMs; atMs < toMs; atMs += QUARTER_MIN * MINUTE_MS) {
    const quarter = Date.parse(`${format.format(atMs).replace(" ", "T")}:00Z`) / MINUTE_MS;
    for (let wall = quarter; wall < quarter + QUARTER_MIN; wall += 1) {
      if (!firstShown.has(wall)) firstShown.set(wall, walls.length);
      walls.push(wall);
    }
  }
  return { zone, fromMs, walls, firstShown };
}

/** The index of the minute that a wall time names: its first showing; one never shown goes on from the minute before. */
export function minuteOfWall(clock: MinuteClock, wall: number): number {
  const shown = clock.firstShown.get(wall);
  if (shown !== undefined) return shown;
  const after = clock.walls.findIndex((one) => one >= wall);
  return after - 1 + (wall - (clock.walls[after - 1] ?? Number.NaN));
}

/** The day of a wall time, `YYYY-MM-DD`. */
export function dayOfWall(wall: number): string {
  return new Date(wall * MINUTE_MS).toISOString().slice(0, 10);
}

/** The ISO weekday of a wall time, 1 Monday to 7 Sunday. */
export function weekdayOfWall(wall: number): number {
  return new Date(wall * MINUTE_MS).getUTCDay() || 7;
}
