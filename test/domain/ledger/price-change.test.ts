import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { changePrice, endsWithout } from "@/server/domain/ledger/price-change";
import { checkRates, type Rate, rateOn } from "@/server/domain/ledger/rates";
import { addDays } from "@/server/domain/time/calendar-day";

const rate = (id: string, effectiveFrom: string, effectiveTo: string | null, priceCents = 8000): Rate => ({
  id,
  kind: "lesson",
  priceCents,
  currency: "USD",
  effectiveFrom,
  effectiveTo,
});

function added(rates: readonly Rate[], id: string, effectiveFrom: string, priceCents = 9000): Rate[] | null {
  const { effectiveTo: _, ...fresh } = rate(id, effectiveFrom, null, priceCents);
  const change = changePrice(rates, fresh, null);
  if (!change.ok) return null;
  const ended = new Map(change.ends.map((end) => [end.rateId, end.effectiveTo]));
  return [
    ...rates.map((one) => ({ ...one, effectiveTo: ended.get(one.id) ?? one.effectiveTo })),
    change.added,
  ];
}

describe("a new price", () => {
  it("ends the one before it on its first day and holds for good", () => {
    expect(added([rate("old", "2026-01-01", null)], "new", "2027-01-01")).toEqual([
      rate("old", "2026-01-01", "2027-01-01"),
      rate("new", "2027-01-01", null, 9000),
    ]);
  });

  it("holds until the price already set for later", () => {
    const rates = [rate("now", "2026-01-01", "2027-06-01"), rate("later", "2027-06-01", null)];
    expect(added(rates, "new", "2027-01-01")?.at(-1)).toEqual(rate("new", "2027-01-01", "2027-06-01", 9000));
  });

  it("cannot begin on or before the last day that was charged, and says the first day it can", () => {
    const { effectiveTo: _, ...fresh } = rate("new", "2026-11-20", null);
    expect(changePrice([], fresh, "2026-11-20")).toEqual({ ok: false, earliestDay: "2026-11-21" });
    expect(changePrice([], fresh, "2026-11-19")).toMatchObject({ ok: true });
  });

  it("never leaves two prices for one day, and holds on its own first day, wherever it begins", () => {
    const starts = fc.uniqueArray(fc.integer({ min: 0, max: 900 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(starts, (days) => {
        let rates: Rate[] = [];
        for (const [index, days_] of days.entries()) {
          const from = addDays("2026-01-01", days_);
          rates = added(rates, `r${index}`, from, index) ?? [];
          expect(checkRates(rates)).toEqual([]);
          expect(rateOn(rates, "lesson", from)).toMatchObject({ ok: true, rate: { id: `r${index}` } });
        }
      }),
    );
  });
});

describe("taking a price out again", () => {
  it("lets the one before it go on, as it was before", () => {
    const before = [rate("old", "2026-01-01", null)];
    const after = added(before, "new", "2027-01-01") ?? [];
    const [, fresh] = after;
    expect(fresh && endsWithout(after, fresh)).toEqual([{ rateId: "old", effectiveTo: null }]);
  });

  it("changes nothing where it stood alone", () => {
    expect(endsWithout([rate("only", "2026-01-01", null)], rate("only", "2026-01-01", null))).toEqual([]);
  });
});
