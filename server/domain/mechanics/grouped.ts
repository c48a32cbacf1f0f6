type Key = string | number | boolean | null;
type KeyOf<Item> = (item: Item) => Key;

/**
 * Items with the same keys together, groups and items in the order in which they first come. Several keys are held apart
 * rather than joined to one text, which would have to be made and read anew for each item.
 * @example grouped([1, 2, 3], (each) => each % 2 === 0) // [[1, 3], [2]]
 */
export function grouped<Item>(items: readonly Item[], ...keysOf: [KeyOf<Item>, ...KeyOf<Item>[]]): Item[][] {
  const groups: Item[][] = [];
  const root: Branch = new Map();
  for (const item of items) {
    let branch = root;
    for (let at = 0; at < keysOf.length - 1; at += 1) branch = branchAt(branch, keysOf[at]?.(item) ?? null);
    const key = keysOf.at(-1)?.(item) ?? null;
    const place = branch.get(key);
    if (typeof place === "number") groups[place]?.push(item);
    else {
      branch.set(key, groups.length);
      groups.push([item]);
    }
  }
  return groups;
}

/** Leads by the next key to a further branch, by the last to the place of its group. */
type Branch = Map<Key, Branch | number>;

function branchAt(branch: Branch, key: Key): Branch {
  const found = branch.get(key);
  if (found instanceof Map) return found;
  const next: Branch = new Map();
  branch.set(key, next);
  return next;
}
