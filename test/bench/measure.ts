/**
 * One figure: how many times the bare baseline of the same run our way costs, or where somebody waits for it, how long
 * that is.
 */
export interface Figure {
  name: string;
  value: number;
  /** `redraws` of the screen; `%` of a whole. */
  unit: "times" | "ms" | "s" | "redraws" | "%";
  target: number;
  ok: boolean;
}

type Work = () => unknown | Promise<unknown>;

const ROUNDS = 7;

/**
 * Runs both ways in turn, so that a busy moment hits both, and compares the medians.
 * @param target the most that our way may cost, as a multiple of the bare way
 */
export async function compare(name: string, target: number, ours: Work, bare: Work): Promise<Figure> {
  await bare();
  await ours();
  const times = { ours: [] as number[], bare: [] as number[] };
  for (let round = 0; round < ROUNDS; round += 1) {
    times.bare.push(await timed(bare));
    times.ours.push(await timed(ours));
  }
  const value = Math.round((median(times.ours) / median(times.bare)) * 100) / 100;
  return { name, value, unit: "times", target, ok: value <= target };
}

/**
 * How long one call takes at the 95th percentile of so many calls, in the calmest of a few runs of them: what else the
 * machine does meanwhile is not ours.
 * @param work is told which call it is, from 0
 */
export async function slowest(
  name: string,
  target: number,
  calls: number,
  work: (call: number) => unknown | Promise<unknown>,
): Promise<Figure> {
  await slowestOf(calls, work);
  const runs: number[] = [];
  for (let run = 0; run < CALM_RUNS; run += 1) runs.push(await slowestOf(calls, work));
  const value = Math.round(Math.min(...runs) * 100) / 100;
  return { name: `${name}, 95th percentile`, value, unit: "ms", target, ok: value <= target };
}

const CALM_RUNS = 4;

async function slowestOf(calls: number, work: (call: number) => unknown | Promise<unknown>) {
  const times: number[] = [];
  for (let call = 0; call < calls; call += 1) times.push(await timed(() => work(call)));
  return percentile95(times);
}

/** The value that 95 of 100 do not exceed. */
export function percentile95(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.ceil(values.length * 0.95) - 1] ?? Number.NaN;
}

async function timed(work: Work): Promise<number> {
  const startMs = performance.now();
  await work();
  return performance.now() - startMs;
}

/** The middle value; of an even number of them the upper of the two. */
export function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}
