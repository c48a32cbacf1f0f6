/**
 * The share of all splits in which the sum of the drawn ranks lies at least as far from its expectation as this one.
 * Every split is counted, not listed: ways to reach each sum with each number of drawn ranks, one rank at a time
 * (Streitberg and Röhmel 1986, Statistical Software Newsletter 12:10-17).
 * @param ranks whole numbers: ranks doubled, so that ties stay whole
 * @param drawn how many are drawn, at most all
 * @param sum of the drawn ranks as it was
 * @example rankSumChance([2, 4, 6, 8], 2, 14) // 2 of 6 splits: 0.3333, rounded
 */
export function rankSumChance(ranks: readonly number[], drawn: number, sum: number): number {
  const total = ranks.reduce((all, rank) => all + rank, 0);
  const ways = waysToDraw(ranks, drawn, total);
  const expected = (drawn * total) / ranks.length;
  const apart = Math.abs(sum - expected) - 1e-9;
  let all = 0;
  let asFar = 0;
  ways.forEach((count, reached) => {
    all += count;
    if (Math.abs(reached - expected) >= apart) asFar += count;
  });
  return asFar / all;
}

function waysToDraw(ranks: readonly number[], drawn: number, total: number): Float64Array {
  const ways = Array.from({ length: drawn + 1 }, () => new Float64Array(total + 1));
  ways[0]?.fill(1, 0, 1);
  let greatest = 0;
  for (const rank of ranks) {
    greatest += rank;
    addRank(ways, rank, greatest);
  }
  return ways[drawn] ?? new Float64Array();
}

/* From the most drawn down, so that a rank is drawn once at most. */
function addRank(ways: readonly Float64Array[], rank: number, greatest: number): void {
  for (let count = ways.length - 1; count > 0; count--) {
    const withIt = ways[count];
    const without = ways[count - 1];
    if (!withIt || !without) continue;
    for (let sum = rank; sum <= greatest; sum++)
      withIt[sum] = (withIt[sum] ?? 0) + (without[sum - rank] ?? 0);
  }
}
