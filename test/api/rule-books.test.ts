import { describe, expect, it } from "vitest";
import { booksById } from "@/server/data/rule-books";
import { insertThrowEntry } from "@/server/data/throw-log";
import type { Rule } from "@/server/domain/throwing/rule";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { NEW_ATHLETE } from "../helpers/new-people";
import { keepOwnBook, OWN_BOOK, withMostAtTwelve } from "../helpers/own-book";
import { because, type Caller, refuses } from "../helpers/refuses";

const SHIPPED = "usa-baseball-2018";
const CHILD = WHO.child.athleteId;

const stateOf = async (api: Caller, bookId: string) => (await api.ruleBooks.book({ bookId })).state;

describe("a copy of a book", () => {
  it("is the academy's own, begins as the same, and names what it was copied from", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    const { bookId } = await admin.ruleBooks.copy({ bookId: SHIPPED, name: "Our guideline" });
    const { book, state, versions } = await admin.ruleBooks.book({ bookId });
    const { book: shipped } = await admin.ruleBooks.book({ bookId: SHIPPED });
    expect(book).toEqual({ ...shipped, id: bookId, name: "Our guideline", standing: "own" });
    expect(state).toMatchObject({ version: 1, basedOnName: shipped.name, notOffered: null });
    expect(versions).toMatchObject([{ version: 1, byName: "Ada Frost" }]);
  });

  it("keeps every version, each in force from when it was saved", async () => {
    const academy = await makeAcademy();
    const before = await keepOwnBook(academy.db);
    const admin = await academy.as(WHO.admin);
    const stricter = withMostAtTwelve(before, 40);
    await admin.ruleBooks.save({ bookId: before.id, version: 1, book: stricter });
    const known = async (atMs?: number) => (await booksById(academy.db, [before.id], atMs)).get(before.id);
    expect(await known(academy.clock.ms - 1)).toEqual(before);
    expect(await known(academy.clock.ms)).toEqual(stricter);
    expect(await known()).toEqual(stricter);
    expect(
      (await admin.ruleBooks.book({ bookId: before.id })).versions.map(({ version }) => version),
    ).toEqual([2, 1]);
  });

  it("stays the academy's own, and of its sample's year, whatever a change says", async () => {
    const academy = await makeAcademy();
    const own = await keepOwnBook(academy.db);
    const admin = await academy.as(WHO.admin);
    const changed = {
      ...own,
      id: SHIPPED,
      standing: "published",
      sampleYear: null,
      name: "Renamed",
    } as const;
    await admin.ruleBooks.save({ bookId: own.id, version: 1, book: changed });
    const { book } = await admin.ruleBooks.book({ bookId: own.id });
    expect(book).toEqual({ ...own, name: "Renamed" });
  });

  it("is refused a gap between rest bands at the field, and nothing is written", async () => {
    const academy = await makeAcademy();
    const own = await keepOwnBook(academy.db);
    const gap = structuredClone(own);
    const rule = gap.rules.find((each) => each.kind === "pitch_count");
    const band = rule?.kind === "pitch_count" ? rule.ageBands[0]?.restBands[1] : undefined;
    if (band) band.minPitches += 1;
    const save = (api: Caller) => api.ruleBooks.save({ bookId: own.id, version: 1, book: gap });
    const index = gap.rules.findIndex((each) => each.kind === "pitch_count");
    await refuses(academy, WHO.admin, save, {
      code: "BAD_REQUEST",
      message: expect.stringContaining("no gap and no overlap"),
      cause: { issues: [{ path: ["book", "rules", index, "ageBands", 0, "restBands", 1, "minPitches"] }] },
    });
  });

  it("is refused over somebody else's version, and a book that ships is never changed", async () => {
    const academy = await makeAcademy();
    const own = await keepOwnBook(academy.db);
    const admin = await academy.as(WHO.admin);
    await admin.ruleBooks.save({ bookId: own.id, version: 1, book: own });
    const late = (api: Caller) => api.ruleBooks.save({ bookId: own.id, version: 1, book: own });
    await refuses(academy, WHO.admin, late, because("changed_meanwhile"));
    const ahead = (api: Caller) => api.ruleBooks.save({ bookId: own.id, version: 7, book: own });
    await refuses(academy, WHO.admin, ahead, because("changed_meanwhile"));
    const shipped = (api: Caller) => api.ruleBooks.save({ bookId: SHIPPED, version: 1, book: own });
    await refuses(academy, WHO.admin, shipped, because("rule_book_invalid"));
    const nowhere = (api: Caller) => api.ruleBooks.save({ bookId: "rbk_none", version: 1, book: own });
    await refuses(academy, WHO.admin, nowhere, because("not_found"));
  });
});

describe("which books are offered", () => {
  const choices = async (api: Caller) =>
    (await api.people.choices({})).ruleBooks.filter((book) => book.isOffered).map((book) => book.id);
  const addWith = (ruleBookId: string) => (api: Caller) =>
    api.families.addAthlete({ ...NEW_ATHLETE, ruleBookId });

  it("a sample of a past year, or a copy of one, only once an admin said that it is current", async () => {
    const academy = await makeAcademy();
    await keepOwnBook(academy.db);
    const admin = await academy.as(WHO.admin);
    expect(await stateOf(admin, OWN_BOOK.id)).toMatchObject({
      notOffered: "not_confirmed",
      confirmation: null,
    });
    expect(await choices(admin)).not.toContain(OWN_BOOK.id);
    await refuses(academy, WHO.admin, addWith(OWN_BOOK.id), because("book_not_offered"));
    await admin.ruleBooks.confirm({ bookId: OWN_BOOK.id });
    const confirmation = { byName: "Ada Frost", atMs: academy.clock.ms };
    expect(await stateOf(admin, OWN_BOOK.id)).toMatchObject({ notOffered: null, confirmation });
    expect(await choices(admin)).toContain(OWN_BOOK.id);
    await addWith(OWN_BOOK.id)(admin);
  });

  it("one that was put aside no more, though whoever goes by it still does", async () => {
    const academy = await makeAcademy();
    const own = await keepOwnBook(academy.db, { sampleYear: null });
    const admin = await academy.as(WHO.admin);
    const { athleteId } = await addWith(own.id)(admin);
    await admin.ruleBooks.setArchived({ bookId: own.id, version: 1, isArchived: true });
    expect(await stateOf(admin, own.id)).toMatchObject({
      notOffered: "archived",
      use: { athletes: 1, teams: 0 },
    });
    await refuses(academy, WHO.admin, addWith(own.id), because("book_not_offered"));
    const { guardians, coachPersonId, ...record } = NEW_ATHLETE;
    await admin.families.editAthlete({ ...record, ruleBookId: own.id, athleteId, version: 1 });
    await admin.ruleBooks.setArchived({ bookId: own.id, version: 2, isArchived: false });
    expect(await choices(admin)).toContain(own.id);
  });

  it("none that only advises, and none that is not there", async () => {
    const academy = await makeAcademy();
    const rules = OWN_BOOK.rules.map((rule) => ({ ...rule, level: "advice" as const }));
    const own = await keepOwnBook(academy.db, { sampleYear: null, rules });
    expect(await stateOf(await academy.as(WHO.admin), own.id)).toMatchObject({ notOffered: "no_limits" });
    await refuses(academy, WHO.admin, addWith(own.id), because("book_not_offered"));
    await refuses(academy, WHO.admin, addWith("rbk_none"), because("book_not_offered"));
  });

  it("a book that is no sample needs no confirming", async () => {
    const academy = await makeAcademy();
    const confirm = (api: Caller) => api.ruleBooks.confirm({ bookId: SHIPPED });
    await refuses(academy, WHO.admin, confirm, because("rule_book_invalid"));
  });
});

describe("what a book would have said", () => {
  it("counts and lists the days and athletes with another answer, and writes nothing", async () => {
    const academy = await makeAcademy();
    await threw(academy, "2026-11-20", 51);
    const admin = await academy.as(WHO.admin);
    const before = academy.snapshot();
    const same = await admin.ruleBooks.preview({ book: OWN_BOOK });
    expect(same).toMatchObject({ athletes: 4, daysThatDiffer: 0, athletesThatDiffer: 0, listed: [] });
    const preview = await admin.ruleBooks.preview({ book: withMostAtTwelve(OWN_BOOK, 40) });
    expect(preview).toMatchObject({ fromDay: "2026-10-26", toDay: "2026-11-24", athletesThatDiffer: 2 });
    expect(preview.daysThatDiffer).toBe(preview.stricter + preview.looser);
    const child = preview.listed.filter(({ athleteId }) => athleteId === CHILD);
    expect(child.find(({ toDay }) => toDay === "2026-11-20")).toMatchObject({
      ...{ name: "Kit Marsh", change: "stricter", fromDay: "2026-10-26", days: 26 },
      ...{ before: "at most 85 by the book", after: "at most 40 by the book" },
    });
    expect(child.find(({ fromDay }) => fromDay === "2026-11-21")).toMatchObject({
      ...{ change: "looser", before: "none by the book", after: "at most 40 by the book" },
    });
    expect(academy.snapshot()).toBe(before);
  });
});

describe("what a book that looks far back would have said", () => {
  it("goes by all that it adds up, from before the days that are compared", async () => {
    const academy = await makeAcademy();
    for (const thrownOn of ["2026-06-01", "2026-07-01", "2026-08-01"]) await threw(academy, thrownOn, 80);
    const cap: Rule = {
      ...({ kind: "total", level: "limit", unit: "pitches", over: { months: 12 } } as const),
      ...{ source: "Ours", effectiveFrom: "2018-01-01", effectiveUntil: null },
      ageBands: [{ ageMin: 11, ageMax: 12, most: 250 }],
    };
    const admin = await academy.as(WHO.admin);
    const book = { ...OWN_BOOK, rules: [...OWN_BOOK.rules, cap] };
    const { listed } = await admin.ruleBooks.preview({ book });
    const child = listed.filter(({ athleteId }) => athleteId === CHILD);
    expect(child).toMatchObject([{ days: 30, change: "stricter", after: "at most 10 by the book" }]);
  });
});

describe("the reading of the books", () => {
  it("is the cautious one until an admin sets another, which holds at once and is on the record", async () => {
    const academy = await makeAcademy();
    await threw(academy, "2026-11-24", 40, "bullpen");
    const admin = await academy.as(WHO.admin);
    const { reading } = await admin.ruleBooks.list({});
    expect(reading.countedKinds).toEqual(["bullpen", "lesson"]);
    const words = async () => (await admin.throwing.view({ athleteId: CHILD })).arm.words;
    expect(await words()).toBe("none by the book");
    await admin.ruleBooks.setReading({ countedKinds: ["lesson"], version: reading.version });
    expect(await words()).toBe("at most 85 by the book");
    const { rows } = await admin.academy.record({ page: 1 });
    expect(rows[0]).toMatchObject({
      action: "academy.reading",
      facts: { counted: "lesson", before: "bullpen lesson" },
    });
    const late = (api: Caller) => api.ruleBooks.setReading({ countedKinds: [], version: reading.version });
    await refuses(academy, WHO.admin, late, because("changed_meanwhile"));
  });
});

describe("who is turned away from the rule books", () => {
  const acts: [string, (api: Caller) => Promise<unknown>][] = [
    ["copying", (api) => api.ruleBooks.copy({ bookId: SHIPPED, name: "Ours" })],
    ["changing", (api) => api.ruleBooks.save({ bookId: OWN_BOOK.id, version: 1, book: OWN_BOOK })],
    [
      "putting aside",
      (api) => api.ruleBooks.setArchived({ bookId: OWN_BOOK.id, version: 1, isArchived: true }),
    ],
    ["confirming", (api) => api.ruleBooks.confirm({ bookId: OWN_BOOK.id })],
    ["comparing", (api) => api.ruleBooks.preview({ book: OWN_BOOK })],
    ["setting the reading", (api) => api.ruleBooks.setReading({ countedKinds: [], version: 1 })],
  ];

  it.each(acts)("%s is an admin's alone, and nothing is written", async (_what, act) => {
    const academy = await makeAcademy();
    await keepOwnBook(academy.db);
    for (const personId of [WHO.coach, WHO.guardian, WHO.adult.personId]) {
      await refuses(academy, personId, act, because("not_found"));
    }
    await refuses(academy, null, act, because("not_signed_in"));
  });

  it("a coach reads them, a family does not", async () => {
    const academy = await makeAcademy();
    const coach = await academy.as(WHO.coach);
    expect((await coach.ruleBooks.list({})).books.length).toBeGreaterThan(0);
    expect((await coach.ruleBooks.book({ bookId: SHIPPED })).state.ages).toBe("7 to 22");
    await refuses(academy, WHO.guardian, (api) => api.ruleBooks.list({}), because("not_found"));
    await refuses(
      academy,
      WHO.guardian,
      (api) => api.ruleBooks.book({ bookId: SHIPPED }),
      because("not_found"),
    );
  });
});

function threw(academy: TestAcademy, thrownOn: string, pitches: number, kind: "game" | "bullpen" = "game") {
  const row = { athleteId: CHILD, thrownOn, pitches, kind, reportedByPersonId: WHO.guardian };
  return insertThrowEntry(academy.db, { ...row, reportedAtMs: academy.clock.ms });
}
