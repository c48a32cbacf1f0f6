/** The two orders of the board: whose limit comes soonest, or the alphabet. */
export const BOARD_ORDERS = ["limit", "name"] as const;

/** One of {@link BOARD_ORDERS}. */
export type BoardOrder = (typeof BOARD_ORDERS)[number];

/** Stands in an address for every coach, where leaving the coach out means the viewer's own athletes. */
export const EVERY_COACH = "all";

/** Where one is on the board. Null stands for all. */
export interface BoardPlace {
  /** A person id, {@link EVERY_COACH}, or null for what the viewer begins with. */
  coach: string | null;
  team: string | null;
  site: string | null;
  order: BoardOrder;
  /** From 1. */
  page: number;
}

/** What an address may carry, as a page is handed it. */
export type BoardSearch = Partial<Record<string, string | string[]>>;

/**
 * The place that an address names; what is missing or makes no sense is what the board begins with.
 * @example boardPlace({ page: "2" }).page // 2
 */
export function boardPlace(search: BoardSearch): BoardPlace {
  const text = (name: string) => {
    const value = search[name];
    return typeof value === "string" && value !== "" ? value : null;
  };
  const page = Number(text("page") ?? 1);
  return {
    coach: text("coach"),
    team: text("team"),
    site: text("site"),
    order: BOARD_ORDERS.find((order) => order === text("order")) ?? "limit",
    page: Number.isInteger(page) && page > 0 && page < 1000 ? page : 1,
  };
}

/**
 * The address of a place on the board.
 * @example armsHref({ coach: null, team: "Herons", site: null, order: "limit", page: 1 }) // "/arms?team=Herons"
 */
export function armsHref({ coach, team, site, order, page }: BoardPlace): string {
  const query = new URLSearchParams({
    ...(coach === null ? {} : { coach }),
    ...(team === null ? {} : { team }),
    ...(site === null ? {} : { site }),
    ...(order === "limit" ? {} : { order }),
    ...(page === 1 ? {} : { page: String(page) }),
  });
  return query.size === 0 ? "/arms" : `/arms?${query}`;
}
