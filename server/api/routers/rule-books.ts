import { z } from "zod";
import { academyReading, saveCountedKinds } from "@/server/data/academy-reading";
import { athleteScope } from "@/server/data/access";
import { newId } from "@/server/data/new-id";
import { bookVersions, confirmBook, saveBookVersion } from "@/server/data/rule-books";
import { Refusal } from "@/server/domain/errors/refusal";
import { OVERRIDE_REASON_MAX_LENGTH } from "@/server/domain/rule-books/limit-override";
import { nextVersion, ownCopy } from "@/server/domain/rule-books/own-book";
import { ruleBookSchema } from "@/server/domain/throwing/rule-book";
import { MOUND_WORK_KINDS, throwReadingSchema } from "@/server/domain/throwing/throw-entry";
import { PLAUSIBLE_MAX_PITCHES } from "@/server/domain/throwing/validate-entry";
import { DONE, done } from "../done";
import { noteAct } from "../note-act";
import { command, query } from "../procedures";
import { bookAnswer, bookAnswers, keptBook } from "../rule-books/book-answer";
import { overrideLimit } from "../rule-books/override-limit";
import { overridesAnswer, overridesOfAthlete } from "../rule-books/overrides-of-athlete";
import { previewAnswer, previewOf } from "../rule-books/preview-book";
import { saveOwnBook } from "../rule-books/save-own-book";
import { router } from "../trpc";

const id = z.string().min(1).max(80);
const version = z.int().min(1).max(100_000);
const nothing = z.strictObject({});
const countedKinds = z.array(z.enum(MOUND_WORK_KINDS)).max(MOUND_WORK_KINDS.length);

export const ruleBooksRouter = router({
  /** Every book, whether it is offered and who goes by it, and how the academy reads them. */
  list: query({
    action: "academy.staffView",
    input: nothing,
    output: z.strictObject({
      books: z.array(bookAnswer),
      reading: throwReadingSchema.extend({ version: z.number() }),
    }),
    run: async ({ db }) => ({ books: await bookAnswers(db), reading: await academyReading(db) }),
  }),

  /** One book, whole, with every version of one of the academy's own, latest first. */
  book: query({
    action: "academy.staffView",
    input: z.strictObject({ bookId: id }),
    output: z.strictObject({
      state: bookAnswer,
      book: ruleBookSchema,
      versions: z.array(
        z.strictObject({
          version,
          name: z.string(),
          byName: z.string(),
          atMs: z.number(),
          isArchived: z.boolean(),
        }),
      ),
    }),
    async run({ db }, { bookId }) {
      const { book } = await keptBook(db, bookId);
      const state = (await bookAnswers(db)).find((each) => each.id === bookId);
      if (!state) throw new Refusal({ reason: "not_found" });
      const versions = (await bookVersions(db, bookId)).map((each) => ({
        ...{ version: each.version, name: each.book.name, isArchived: each.isArchived },
        ...{ byName: each.savedByName, atMs: each.savedAtMs },
      }));
      return { state, book, versions };
    },
  }),

  /** Copies a book as the academy's own. */
  copy: command({
    action: "academy.edit",
    input: z.strictObject({ bookId: id, name: z.string().trim().min(1).max(120) }),
    output: z.strictObject({ bookId: id }),
    async run(scope, input) {
      const { book } = await keptBook(scope.db, input.bookId);
      const bookId = newId("rbk");
      const copied = ownCopy(book, { id: bookId, name: input.name });
      const facts = {
        read: 0,
        basedOnId: book.id,
        savedByPersonId: scope.actor.personId,
        savedAtMs: scope.nowMs,
      };
      await saveBookVersion(scope.db, { isArchived: false, book: copied }, facts);
      await noteAct(scope, "rule_book.copied", bookId, { basedOnId: book.id });
      return { bookId };
    },
  }),

  /** Saves a changed book of the academy's own as its next version; it holds at once for those who go by it. */
  save: command({
    action: "academy.edit",
    input: z.strictObject({ bookId: id, version, book: ruleBookSchema }),
    output: done,
    async run(scope, { bookId, version: read, book }) {
      await saveOwnBook(scope, { bookId, read }, ({ isArchived, book: before }) => ({
        isArchived,
        book: nextVersion(before, book),
      }));
      await noteAct(scope, "rule_book.edited", bookId, { version: read + 1 });
      return DONE;
    },
  }),

  /** Puts a book of the academy's own aside, so that nobody can choose it anew, or offers it again. */
  setArchived: command({
    action: "academy.edit",
    input: z.strictObject({ bookId: id, version, isArchived: z.boolean() }),
    output: done,
    async run(scope, { bookId, version: read, isArchived }) {
      await saveOwnBook(scope, { bookId, read }, ({ book }) => ({ isArchived, book }));
      await noteAct(scope, isArchived ? "rule_book.put_aside" : "rule_book.offered", bookId);
      return DONE;
    },
  }),

  /** Says of a dated sample, or of a copy of one, that it is current: from then on it can be chosen. */
  confirm: command({
    action: "academy.edit",
    input: z.strictObject({ bookId: id }),
    output: done,
    async run(scope, { bookId }) {
      const { book } = await keptBook(scope.db, bookId);
      if (book.sampleYear === null) {
        throw new Refusal({ reason: "rule_book_invalid", why: "Only a sample of a past year is confirmed." });
      }
      const { actor, nowMs } = scope;
      await confirmBook(scope.db, { bookId, confirmedByPersonId: actor.personId, confirmedAtMs: nowMs });
      await noteAct(scope, "rule_book.confirmed", bookId, { sampleYear: book.sampleYear });
      return DONE;
    },
  }),

  /** What a book, saved or not, would have said of the last thirty days in place of the one each athlete goes by. */
  preview: query({
    action: "academy.edit",
    input: z.strictObject({ book: ruleBookSchema }),
    output: previewAnswer,
    run: (scope, { book }) => previewOf(scope, book),
  }),

  /** Says which mound work counts as pitches; every answer goes by it at once. */
  setReading: command({
    action: "academy.edit",
    input: z.strictObject({ countedKinds, version }),
    output: done,
    async run(scope, input) {
      const before = await academyReading(scope.db);
      const kinds = MOUND_WORK_KINDS.filter((kind) => input.countedKinds.includes(kind));
      if (!(await saveCountedKinds(scope.db, kinds, input.version))) {
        throw new Refusal({ reason: "changed_meanwhile" });
      }
      const facts = { counted: kinds.join(" ") || "none", before: before.countedKinds.join(" ") || "none" };
      await noteAct(scope, "academy.reading", "academy", facts);
      return DONE;
    },
  }),

  /** Every override of an athlete's limits, with its reason and who gave it. */
  overrides: query({
    action: "throwing.view",
    input: z.strictObject({ athleteId: id }),
    output: overridesAnswer,
    athlete: (db, { athleteId }) => athleteScope(db, athleteId),
    run: (scope) => overridesOfAthlete(scope),
  }),

  /** Overrides a limit for one athlete and day, with a reason; 0 pitches take it back. Nothing overrides pain. */
  overrideLimit: command({
    action: "throwing.override",
    input: z.strictObject({
      athleteId: id,
      day: z.iso.date(),
      pitches: z.int().min(0).max(PLAUSIBLE_MAX_PITCHES),
      reason: z.string().trim().min(1, "Say why.").max(OVERRIDE_REASON_MAX_LENGTH),
    }),
    output: done,
    athlete: (db, { athleteId }) => athleteScope(db, athleteId),
    async run(scope, input) {
      await overrideLimit(scope, input);
      return DONE;
    },
  }),
});
