/**
 * The exact chance, two-sided, of Kendall's S at least as far from 0, without ties (Kendall 1970, Rank Correlation
 * Methods, 4th ed.). Counted over all orders by how many pairs stand the wrong way round: with one value more, it adds
 * 0 to n - 1 such pairs, each as likely.
 * @param n number of values, 1 or more
 * @example kendallChance(5, 6) // 7/60 each side: 0.2333, rounded
 */
export function kendallChance(n: number, s: number): number {
  const pairs = (n * (n - 1)) / 2;
  const discordantAtMost = (pairs - Math.abs(s)) / 2;
  const chances = chancesOfDiscordant(n, Math.floor(discordantAtMost));
  return Math.min(1, 2 * chances.reduce((sum, chance) => sum + chance, 0));
}

/* Only the lower end is needed, where the chances rise: there a window's sum loses no digits. */
function chancesOfDiscordant(n: number, last: number): Float64Array {
  let chances = new Float64Array(last + 1).fill(1, 0, 1);
  for (let size = 2; size <= n; size++) chances = withOneMore(chances, size);
  return chances;
}

function withOneMore(chances: Float64Array, size: number): Float64Array<ArrayBuffer> {
  const more = new Float64Array(chances.length);
  let window = 0;
  for (let index = 0; index < chances.length; index++) {
    window += (chances[index] ?? 0) - (chances[index - size] ?? 0);
    more[index] = window / size;
  }
  return more;
}
