/**
 * Chances adjusted for how many were looked at: the least rate of false discoveries at which each still counts as one
 * (Benjamini and Hochberg 1995, J R Stat Soc B 57:289-300; as R's `p.adjust` by "BH").
 * @param chances in any order, each from 0 to 1; all that were looked at, not the promising ones
 * @returns one for each, in their order; of none, none
 * @throws RangeError for what is no chance: the caller's fault
 * @example adjustForMany([0.01, 0.04, 0.03]) // [0.03, 0.04, 0.04]
 */
export function adjustForMany(chances: readonly number[]): number[] {
  const strange = chances.find((chance) => !(chance >= 0 && chance <= 1));
  if (strange !== undefined) throw new RangeError(`A chance lies from 0 to 1, not at ${strange}.`);
  const fromGreatest = chances
    .map((chance, index) => ({ chance, index }))
    .sort((one, other) => other.chance - one.chance);
  const adjusted = new Array<number>(chances.length);
  let least = 1;
  fromGreatest.forEach(({ chance, index }, before) => {
    least = Math.min(least, chance * (chances.length / (chances.length - before)));
    adjusted[index] = least;
  });
  return adjusted;
}
