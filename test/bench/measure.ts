/** One figure: how many times the bare baseline of the same run our way costs. */
export interface Figure {
  name: string;
  value: number;
  unit: "times";
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

async function timed(work: Work): Promise<number> {
  const startMs = performance.now();
  await work();
  return performance.now() - startMs;
}

function median(values: number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}
