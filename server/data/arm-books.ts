import type { Db } from "@/db/client";
import { reachDays } from "@/server/domain/throwing/dated-book";
import type { ArmQuestion } from "@/server/domain/throwing/pitches-allowed";
import type { Rule } from "@/server/domain/throwing/rule";
import type { RuleBook } from "@/server/domain/throwing/rule-book";
import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { type ArmRows, type ArmsAsked, byAthlete } from "./arm-rows";
import { booksById } from "./rule-books";

interface ArmAndBook {
  athleteId: string;
  bookId: string;
}

/** The books that some arms go by. */
export interface BookShelf {
  /** The athlete's own book first, then those of the teams they pitch for now, each once. */
  booksOf: (arm: ArmAndBook) => ArmQuestion["books"];
  /** The arms whose books look far back, and since which day their entries are read: from before `sinceDay`. */
  farOf: (
    arms: readonly ArmAndBook[],
    sinceDay: CalendarDay,
    levels: readonly Rule["level"][],
  ) => Pick<ArmsAsked, "farIds" | "farSinceDay">;
}

/** Books that look back on fewer days have all that they add up read for every arm. */
const NEAR_DAYS = 24;

/**
 * Reads the books of some arms. Arms that go by the same books share one list of them, so that what is worked out of a
 * book is worked out once.
 * @throws Error, when asked, for a book that is nowhere (the caller's fault: books are never deleted)
 */
export async function bookShelf(
  db: Db,
  arms: readonly ArmAndBook[],
  teamBooks: ArmRows<"teamBooks">,
): Promise<BookShelf> {
  const books = await booksById(db, new Set([...arms, ...teamBooks].map((row) => row.bookId)));
  const ofTeams = byAthlete(teamBooks);
  const shelf = new Map<string, ArmQuestion["books"]>();
  const booksOf: BookShelf["booksOf"] = ({ athleteId, bookId }) => {
    const ids = new Set([bookId, ...(ofTeams.get(athleteId) ?? []).map((team) => team.bookId)]);
    const key = [...ids].join(" ");
    const found = shelf.get(key) ?? booksWith(ids, books);
    shelf.set(key, found);
    return found;
  };
  const farOf: BookShelf["farOf"] = (some, sinceDay, levels) => {
    const reachOf = reaches(levels);
    const far = some.filter((arm) => reachOf(booksOf(arm)) > NEAR_DAYS);
    const farDays = Math.max(0, ...far.map((arm) => reachOf(booksOf(arm))));
    return { farIds: far.map((arm) => arm.athleteId), farSinceDay: addDays(sinceDay, -farDays) };
  };
  return { booksOf, farOf };
}

/** How many days back lists of books look by their rules of some levels, worked out once for each list. */
function reaches(levels: readonly Rule["level"][]): (books: ArmQuestion["books"]) => number {
  const known = new Map<ArmQuestion["books"], number>();
  return (books) => {
    const before = known.get(books);
    if (before !== undefined) return before;
    const rules = books.flatMap((book) => book.rules).filter(({ level }) => levels.includes(level));
    const days = Math.max(0, ...rules.map(reachDays));
    known.set(books, days);
    return days;
  };
}

function booksWith(ids: ReadonlySet<string>, books: ReadonlyMap<string, RuleBook>): ArmQuestion["books"] {
  const [first, ...others] = [...ids].map((id) => {
    const book = books.get(id);
    if (!book) throw new Error(`There is no rule book ${id}.`);
    return book;
  });
  if (!first) throw new Error("An arm goes by one book at least.");
  return [first, ...others];
}
