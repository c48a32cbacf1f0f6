/**
 * Items with one key together, groups and items in the order in which they first come.
 * @example grouped([1, 2, 3], (each) => each % 2 === 0) // [[1, 3], [2]]
 */
export function grouped<Item>(
  items: readonly Item[],
  keyOf: (item: Item) => string | number | boolean,
): Item[][] {
  const groups = new Map<string | number | boolean, Item[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return [...groups.values()];
}
