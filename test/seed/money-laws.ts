import { expect, it } from "vitest";
import { checkRates } from "@/server/domain/ledger/rates";
import { type BuiltDay, groupedBy } from "./demo-days";
import { booksOf, monthsOf } from "./month-books";

/** What the ledger asks of sessions, reviews, throws and charges. */
export function describeMoney({ rows }: BuiltDay): void {
  it("logs, counts and charges each session that was held once for each athlete that came", () => {
    const logsOf = groupedBy(rows.sessionLog, ({ sessionId }) => sessionId);
    const chargesOf = groupedBy(rows.charge, ({ sessionId }) => sessionId);
    const thrownIn = groupedBy(rows.throwEntry, ({ sessionId }) => sessionId);
    const comersOf = groupedBy(rows.sessionAthlete, ({ sessionId }) => sessionId);
    const ids = (of: readonly { athleteId: string }[]) =>
      of
        .map(({ athleteId }) => athleteId)
        .sort()
        .join();
    const counts = (of: readonly { athleteId: string; pitches: number }[]) =>
      of
        .map(({ athleteId, pitches }) => `${athleteId} ${pitches}`)
        .sort()
        .join();
    const amiss = rows.session.filter(({ id, state }) => {
      const came = logsOf(id).filter(({ attendance }) => attendance === "came");
      const thrown = came.filter(({ pitches }) => pitches > 0);
      const logged = ids(logsOf(id)) === (state === "logged" ? ids(comersOf(id)) : "");
      return !logged || ids(chargesOf(id)) !== ids(came) || counts(thrownIn(id)) !== counts(thrown);
    });
    expect(amiss).toEqual([]);
  });

  it("adds up to the cent in every month, from the rows and from the charges", () => {
    const months = monthsOf(rows);
    expect(months.length).toBeGreaterThanOrEqual(9);
    for (const month of months) {
      const books = booksOf(rows, month);
      expect(books.differences, month).toEqual([]);
      expect(books.agree).toBe(true);
    }
  });

  it("has one change of price within the season, and never two prices on one day", () => {
    const rates = rows.rate.map((rate) => ({ ...rate, effectiveTo: rate.effectiveTo ?? null }));
    expect(checkRates(rates)).toEqual([]);
    const lessons = rows.charge.filter(({ kind }) => kind === "lesson").map(({ amountCents }) => amountCents);
    expect([...new Set(lessons)].sort()).toEqual([8500, 9000]);
  });
}
