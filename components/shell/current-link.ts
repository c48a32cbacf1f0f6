/** One place in the navigation. */
export interface NavItem {
  href: string;
  label: string;
  /** How many wait there; shown beside the label, left out at zero. */
  count?: number;
  /** What the number counts, for those who hear it, e.g. "waiting". */
  countLabel?: string;
}

/**
 * The item that a path belongs to: the longest address that the path equals or lies under.
 * @returns null when none fits
 * @example currentHref("/reviews/rnd_1", [{ href: "/reviews", label: "Reviews" }]) // "/reviews"
 */
export function currentHref(path: string, items: readonly Pick<NavItem, "href">[]): string | null {
  const fitting = items
    .map((item) => item.href)
    .filter((href) => path === href || (href !== "/" && path.startsWith(`${href}/`)));
  return fitting.sort((a, b) => b.length - a.length)[0] ?? null;
}
