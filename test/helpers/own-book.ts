import type { Db } from "@/db/client";
import { saveBookVersion } from "@/server/data/rule-books";
import { USA_BASEBALL_2018 } from "@/server/domain/throwing/books/usa-baseball-2018";
import type { RuleBook } from "@/server/domain/throwing/rule-book";
import { WHO } from "./who";

/** A book of the academy's own: the guideline, as a copy of a sample of 2017. */
export const OWN_BOOK: RuleBook = {
  ...USA_BASEBALL_2018,
  ...{ id: "rbk_own", name: "Our own book", standing: "own", sampleYear: 2017 },
};

/** Puts {@link OWN_BOOK} on record as it is, or changed, saved by the admin at an instant (0, when left out). */
export async function keepOwnBook(db: Db, changed: Partial<RuleBook> = {}, savedAtMs = 0): Promise<RuleBook> {
  const book = { ...OWN_BOOK, ...changed };
  const facts = { read: 0, basedOnId: USA_BASEBALL_2018.id, savedByPersonId: WHO.admin, savedAtMs };
  await saveBookVersion(db, { isArchived: false, book }, facts);
  return book;
}

/** A book with other pitches for its ages 11 and 12: at most `most` in a day, without any rest. */
export function withMostAtTwelve(book: RuleBook, most: number): RuleBook {
  const rest = [{ minPitches: 1, maxPitches: most, restDays: 0 }];
  const rules = book.rules.map((rule) =>
    rule.kind === "pitch_count"
      ? {
          ...rule,
          ageBands: rule.ageBands.map((band) =>
            band.ageMin === 11 ? { ...band, dailyMaxPitches: most, restBands: rest } : band,
          ),
        }
      : rule,
  );
  return { ...book, rules };
}
