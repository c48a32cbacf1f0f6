import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chargeFor } from "@/server/domain/ledger/charge";
import { CHARGE_KINDS, chargeKindLabel } from "@/server/domain/ledger/charge-kind";
import { checkRates, type Rate, rateOn } from "@/server/domain/ledger/rates";
import { addDays } from "@/server/domain/time/calendar-day";

const rate = (id: string, priceCents: number, effectiveFrom: string, effectiveTo: string | null): Rate => ({
  ...{ id, kind: "lesson", priceCents, currency: "USD", effectiveFrom, effectiveTo },
});
const RATES = [
  rate("r1", 6000, "2026-01-01", "2026-09-01"),
  rate("r2", 6550, "2026-09-01", null),
  { ...rate("r3", 1500, "2026-01-01", null), kind: "review" as const },
  { ...rate("r4", 0, "2026-01-01", null), kind: "assessment" as const },
];

describe("the rate in force", () => {
  it.each([
    ["2025-12-31", null],
    ["2026-01-01", "r1"],
    ["2026-08-31", "r1"],
    ["2026-09-01", "r2"],
    ["2099-01-01", "r2"],
  ])("on %s is %s", (day, id) => {
    const found = rateOn(RATES, "lesson", day);
    expect(found.ok ? found.rate.id : null).toBe(id);
  });

  it("is refused with its kind and day where nothing is priced", () => {
    expect(rateOn(RATES, "bullpen", "2026-05-05")).toEqual({
      ok: false,
      refusal: { reason: "no_rate", kind: "bullpen", day: "2026-05-05" },
    });
  });

  it("throws rather than pick one of two", () => {
    expect(() => rateOn([...RATES, rate("r9", 1, "2026-12-01", null)], "lesson", "2026-12-01")).toThrow("r9");
  });
});

describe("a list of rates", () => {
  it("is sound when one takes over from the other, has a gap, or prices other kinds", () => {
    expect(checkRates(RATES)).toEqual([]);
    expect(checkRates([rate("a", 1, "2026-01-01", "2026-02-01"), rate("b", 1, "2026-03-01", null)])).toEqual(
      [],
    );
    expect(checkRates([])).toEqual([]);
  });

  it.each([
    [
      "one day shared",
      rate("a", 1, "2026-01-01", "2026-02-02"),
      rate("b", 1, "2026-02-01", null),
      "2026-02-01",
    ],
    ["two without an end", rate("a", 1, "2026-05-01", null), rate("b", 1, "2026-01-01", null), "2026-05-01"],
    [
      "one inside the other",
      rate("a", 1, "2026-01-01", null),
      rate("b", 1, "2026-03-01", "2026-03-02"),
      "2026-03-01",
    ],
  ])("is refused for %s, with both and the first day", (_name, one, other, day) => {
    expect(checkRates([one, other])).toEqual([
      { reason: "rates_overlap", kind: "lesson", rateIds: ["a", "b"], day },
    ]);
  });

  it("is refused for a rate that holds on no day", () => {
    expect(checkRates([rate("a", 1, "2026-02-01", "2026-02-01")])).toEqual([
      { reason: "rate_never_holds", rateId: "a" },
    ]);
  });

  it("that is sound never leaves two prices for any day, and one that is not does on the day it names", () => {
    const anyRate = fc
      .record({ from: fc.nat({ max: 30 }), length: fc.option(fc.nat({ max: 12 })), price: fc.nat() })
      .map(({ from, length, price }) => {
        const start = addDays("2026-02-15", from);
        return rate("", price, start, length === null ? null : addDays(start, length));
      });
    fc.assert(
      fc.property(fc.array(anyRate, { maxLength: 5 }), (list) => {
        const rates = list.map((one, index) => ({ ...one, id: `r${index}` }));
        const holding = (day: string) =>
          rates.filter(
            ({ effectiveFrom, effectiveTo }) => effectiveFrom <= day && (effectiveTo ?? "9999") > day,
          );
        const days = Array.from({ length: 50 }, (_, ahead) => addDays("2026-02-10", ahead));
        const overlaps = checkRates(rates).filter((fault) => fault.reason === "rates_overlap");
        expect(overlaps.length > 0).toBe(days.some((day) => holding(day).length > 1));
        for (const { day, rateIds } of overlaps) {
          expect(holding(day).map(({ id }) => id)).toEqual(expect.arrayContaining(rateIds));
        }
      }),
    );
  });
});

describe("a charge", () => {
  it("is the price in force for each athlete, with the rate it came from", () => {
    expect(chargeFor({ kind: "lesson", athleteId: "a1", day: "2026-11-30" }, RATES)).toEqual({
      ok: true,
      charge: {
        ...{ athleteId: "a1", kind: "lesson", chargedOn: "2026-11-30" },
        ...{ rateId: "r2", amountCents: 6550, currency: "USD" },
      },
    });
  });

  it("of nothing is still a charge, and a kind without a rate is refused", () => {
    expect(chargeFor({ kind: "assessment", athleteId: "a1", day: "2026-11-30" }, RATES)).toMatchObject({
      charge: { amountCents: 0 },
    });
    expect(chargeFor({ kind: "group", athleteId: "a1", day: "2026-11-30" }, RATES).ok).toBe(false);
  });

  it("has words for every kind", () => {
    expect(new Set(CHARGE_KINDS.map(chargeKindLabel)).size).toBe(CHARGE_KINDS.length);
    expect(chargeKindLabel("review")).toBe("Review");
  });
});
