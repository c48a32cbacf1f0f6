/** Where something stands in a draft: keys and positions from the top. */
export type DraftPath = readonly (string | number)[];

/** The name of the field at a path: what a refusal names, too. */
export function fieldNameOf(path: DraftPath): string {
  return path.join(".");
}

/**
 * A draft with another value at a path; everything beside it is the same.
 * @example withValueAt({ rules: [{ maxDays: 2 }] }, ["rules", 0, "maxDays"], 3) // { rules: [{ maxDays: 3 }] }
 */
export function withValueAt<Draft>(draft: Draft, path: DraftPath, value: unknown): Draft {
  const [key, ...rest] = path;
  if (key === undefined) return value as Draft;
  if (Array.isArray(draft)) {
    return draft.map((item, index) => (index === key ? withValueAt(item, rest, value) : item)) as Draft;
  }
  const fields = draft as Record<string, unknown>;
  return { ...fields, [key]: withValueAt(fields[key], rest, value) } as Draft;
}

/** A draft with an item more at the end of the list at a path. */
export function withItemAt<Draft>(draft: Draft, path: DraftPath, item: unknown): Draft {
  return withValueAt(draft, path, [...listAt(draft, path), item]);
}

/** A draft without the item at a path. */
export function withoutItemAt<Draft>(draft: Draft, path: DraftPath): Draft {
  const list = path.slice(0, -1);
  const at = path.at(-1);
  return withValueAt(
    draft,
    list,
    listAt(draft, list).filter((_, index) => index !== at),
  );
}

function listAt(draft: unknown, path: DraftPath): unknown[] {
  const found = path.reduce<unknown>((part, key) => (part as Record<string, unknown>)[key], draft);
  return Array.isArray(found) ? found : [];
}

/** The items of a list with the path of each, for keys and fields. */
export function itemsWithPaths<Item>(items: readonly Item[], path: DraftPath) {
  return items.map((item, index) => ({ item, path: [...path, index], isLast: index === items.length - 1 }));
}
