import { LITTLE_LEAGUE_BASEBALL } from "./books/little-league-baseball";
import { MINNESOTA_2017 } from "./books/minnesota-2017";
import { NORTH_DAKOTA_2017 } from "./books/north-dakota-2017";
import { TOURNAMENT_INNINGS } from "./books/tournament-innings";
import { USA_BASEBALL_2018 } from "./books/usa-baseball-2018";
import { VOLUME_CAPS_2006 } from "./books/volume-caps-2006";
import type { RuleBook } from "./rule-book";

/** Every book that ships, the one a new academy starts with first. */
export const SHIPPED_BOOKS: readonly RuleBook[] = [
  USA_BASEBALL_2018,
  LITTLE_LEAGUE_BASEBALL,
  TOURNAMENT_INNINGS,
  MINNESOTA_2017,
  NORTH_DAKOTA_2017,
  VOLUME_CAPS_2006,
];
