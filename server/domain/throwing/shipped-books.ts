import { USA_BASEBALL_2018 } from "./books/usa-baseball-2018";
import type { RuleBook } from "./rule-book";

/** Every book that ships, the one a new academy starts with first. */
export const SHIPPED_BOOKS: readonly RuleBook[] = [USA_BASEBALL_2018];
