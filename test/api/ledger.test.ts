import { parse } from "csv-parse/sync";
import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { charge, rate } from "@/db/schema/ledger";
import { person } from "@/db/schema/people";
import { review } from "@/db/schema/reviews";
import { insertCharge } from "@/server/data/charges";
import { monthFile } from "@/server/exports/month-file";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { makeBusyAcademy } from "../helpers/busy-academy";
import { bullpen, expectRefused, TUESDAY_AT_FIVE } from "../helpers/sessions";

let academy: TestAcademy;

beforeEach(async () => {
  academy = await makeAcademy();
});

/** Books, checks in and logs a bullpen of the child on Tue 1 Dec. */
async function holdBullpen() {
  const { sessionId } = await (await academy.as(WHO.coach)).sessions.book(bullpen());
  academy.clock.ms = TUESDAY_AT_FIVE + 31 * 60_000;
  const coach = await academy.as(WHO.coach);
  await coach.sessions.checkIn({ sessionId, athleteId: WHO.child.athleteId, throws: [], pain: null });
  const line = {
    athleteId: WHO.child.athleteId,
    attendance: "came" as const,
    minutes: 30,
    pitches: 22,
    work: [],
    note: "",
  };
  await coach.sessions.log({ sessionId, version: 2, lines: [line] });
  return sessionId;
}

const readDecember = async () => (await academy.as(WHO.admin)).ledger.month({ month: "2026-12" });

describe("the month", () => {
  it("adds up three ways once what was held is logged", async () => {
    await holdBullpen();
    const books = await readDecember();
    const sum = [{ currency: "USD", amountCents: 8000 }];
    expect(books).toMatchObject({ byRates: sum, fromRows: sum, fromCharges: sum, agree: true, toMend: [] });
    expect(books.counts).toEqual({ sessions: 1, reviews: 0, charges: 1 });
    expect(books.rows).toMatchObject([
      { athleteName: "Kit Marsh", minutes: 30, pitches: 22, state: "Logged" },
    ]);
    expect(books.byKind).toMatchObject([{ name: "Bullpen", amountCents: 8000, rowCount: 1 }]);
    expect(books.byCoach).toMatchObject([{ name: "Cole Rivers", amountCents: 8000 }]);
  });

  it("names a session that is over and was not logged, with the way to it", async () => {
    const { sessionId } = await (await academy.as(WHO.coach)).sessions.book(bullpen());
    academy.clock.ms = TUESDAY_AT_FIVE + 31 * 60_000;
    expect((await readDecember()).toMend).toEqual([
      { words: "Not logged: Tue 1 Dec 17:00, Kit Marsh", href: `/calendar/${sessionId}`, act: "Log it" },
    ]);
  });

  it("names a kind that is booked and has no price", async () => {
    await (await academy.as(WHO.coach)).sessions.book(bullpen());
    await academy.db.update(rate).set({ effectiveTo: "2026-12-01" }).where(eq(rate.kind, "bullpen"));
    expect((await readDecember()).toMend[0]?.words).toBe(
      "No rate for bullpen from Tue 1 Dec: 1 session cannot be logged",
    );
  });

  it("does not agree when a charge is missing, and says whose", async () => {
    const busy = await makeBusyAcademy();
    academy = busy.academy;
    academy.sqlite.exec("DROP TRIGGER charge_append_only_delete");
    await academy.db.delete(charge).where(eq(charge.athleteId, WHO.child.athleteId));
    const books = await (await academy.as(WHO.admin)).ledger.month({ month: "2026-11" });
    expect(books.agree).toBe(false);
    expect(books.toMend.map((one) => one.words)).toContain("No charge: Bullpen of Kit Marsh, Tue 10 Nov");
  });

  it("keeps the price of the day whatever it costs later, and counts nothing for what was taken back", async () => {
    await holdBullpen();
    await academy.db.update(rate).set({ effectiveTo: "2026-12-15" }).where(eq(rate.id, "rate_bullpen"));
    await academy.db.insert(rate).values({
      ...{
        id: "rate_bullpen_2",
        kind: "bullpen",
        priceCents: 9000,
        currency: "USD",
        effectiveFrom: "2026-12-15",
      },
    });
    expect((await readDecember()).fromCharges).toEqual([{ currency: "USD", amountCents: 8000 }]);
    const [made] = await academy.db.select().from(charge);
    await academy.db.insert(charge).values({
      ...(made as typeof charge.$inferInsert),
      ...{ id: "chg_back", amountCents: -8000, reversesId: made?.id ?? "", atMs: academy.clock.ms },
    });
    expect(await readDecember()).toMatchObject({
      agree: true,
      fromCharges: [{ amountCents: 0 }],
      byRates: [{ amountCents: 0 }],
    });
  });

  it("is for admins alone", async () => {
    for (const who of [WHO.coach, WHO.guardian, WHO.adult.personId]) {
      const api = await academy.as(who);
      await expectRefused(academy, () => api.ledger.month({ month: "2026-12" }), { reason: "not_found" });
    }
  });
});

describe("the month's file", () => {
  it("has a row for each session and review, safe cells, and a total that is the sum of its rows to the cent", async () => {
    const busy = await makeBusyAcademy();
    academy = busy.academy;
    await academy.db
      .update(person)
      .set({ givenName: '=1+1,"x"\nKit' })
      .where(eq(person.id, WHO.child.personId));
    for (const row of await academy.db.select().from(review).where(eq(review.kind, "review"))) {
      await insertCharge(academy.db, {
        ...{
          kind: "review",
          athleteId: row.athleteId,
          source: { reviewId: row.id },
          coachPersonId: row.coachPersonId,
        },
        ...{ siteId: WHO.site, chargedOn: "2026-11-24", atMs: academy.clock.ms },
      });
    }
    const { fileName, csv } = await monthFile(academy.db, "2026-11");
    expect(fileName).toBe("slabside-2026-11.csv");
    const rows = parse(csv, { columns: true }) as Record<string, string>[];
    const total = rows.at(-1);
    const body = rows.slice(0, -1);
    expect(total?.Date).toBe("Total");
    const cents = (text: string | undefined) => Math.round(Number(text) * 100);
    expect(cents(total?.Amount)).toBe(body.reduce((sum, row) => sum + cents(row.Amount), 0));
    const [kept] = academy.sqlite
      .prepare("SELECT sum(amount_cents) AS cents FROM charge WHERE charged_on LIKE '2026-11-%'")
      .all() as { cents: number }[];
    expect(cents(total?.Amount)).toBe(kept?.cents);
    expect(body.some((row) => row.Kind === "Review")).toBe(true);
    expect(body.some((row) => row.Athlete === `'=1+1,"x"\nKit Marsh`)).toBe(true);
  });
});
