import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayTicks, heldRows } from "@/components/charts/held-rows";
import { holdingHref, holdingPlace } from "@/components/holding/holding-address";
import {
  curveInWords,
  intervalInWords,
  ledgerInWords,
  medianInWords,
} from "@/components/holding/holding-words";
import { holdingLedger, type LedgerCorrection } from "@/server/domain/mechanics/holding-ledger";

const EVERYTHING = { phase: null, checkpointId: null, coachId: null };
const given = (of: Partial<LedgerCorrection> = {}): LedgerCorrection => ({
  ...{ checkpointId: "head-steady", coachId: "ada", drill: "Towel drill", phase: "stride" as const },
  ...{ days: 20, hasHeld: true, isOpen: of.hasHeld === false, hasComeBack: false },
  ...of,
});
const told = (corrections: readonly LedgerCorrection[]) => {
  const ledger = holdingLedger(corrections, EVERYTHING);
  return [...ledgerInWords(ledger.all), curveInWords(ledger)];
};

describe("the ledger in words", () => {
  it("of one correction says how many it takes", () => {
    expect(told([given({ hasHeld: false })])).toEqual([
      "Too few corrections (1 of at least 5).",
      "0 held, 1 is open, 0 were retired before it held.",
      "A curve is drawn from 5 corrections on.",
    ]);
  });

  it("of open ones alone says that none has held", () => {
    expect(told(Array.from({ length: 6 }, () => given({ hasHeld: false, days: 40 })))).toEqual([
      "Less than half have held so far.",
      "0 held, 6 are open, 0 were retired before it held.",
      "None has held so far, so there is no curve yet. The longest was watched for 40 days.",
    ]);
  });

  it("reads the curve out, and tells how many came back", () => {
    /* The interval begins where its curve crosses a half: 0.8 × exp(-1.96 × √(1/20)) = 0.516 last at 5, and 0.293 at 10. */
    const life = [5, 10, 20, 40].map((days) => given({ days, hasComeBack: days === 5 }));
    expect(told([...life, given({ days: 90, hasHeld: false, isOpen: false })])).toEqual([
      "Half held within 20 days (10 or more).",
      "4 held, 0 are open, 1 was retired before it held.",
      "Of those that held, 1 came back.",
      "Held: 40 % within 14 days, 60 % within 30 days, 80 % within 60 days, 80 % within 90 days.",
    ]);
  });

  it("never says NaN, null or undefined", () => {
    const drawn = fc.array(
      fc.record({ days: fc.nat(400), hasHeld: fc.boolean() }).map((each) => given(each)),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(drawn, (corrections) => {
        const { all } = holdingLedger(corrections, EVERYTHING);
        const words = [...told(corrections), medianInWords(all), intervalInWords(all)].join(" ");
        expect(words).not.toMatch(/NaN|null|undefined|Infinity/);
      }),
    );
  });
});

describe("the ledger's address", () => {
  it("says what is chosen, and reads back what it says", () => {
    const place = { phase: "stride" as const, checkpointId: "head-steady", coachId: "per_1" };
    expect(holdingHref(place)).toBe("/academy/holding?phase=stride&checkpoint=head-steady&coach=per_1");
    expect(holdingPlace({ phase: "stride", checkpoint: "head-steady", coach: "per_1" })).toEqual(place);
    expect(holdingHref(EVERYTHING)).toBe("/academy/holding");
  });

  it("that makes no sense stands for all", () => {
    const search = { phase: "sideways", checkpoint: ["a", "b"], coach: "x".repeat(65) };
    expect(holdingPlace(search)).toEqual(EVERYTHING);
  });
});

describe("the curve's drawing", () => {
  it("begins at nothing, and its last step stands until the last day watched", () => {
    const point = { days: 10, share: 0.5, lower: 0.2, upper: 0.8 };
    expect(heldRows([point], 15)).toEqual([
      { days: 0, share: 0, lower: 0, upper: 0 },
      point,
      { ...point, days: 15 },
    ]);
    expect(heldRows([point], 10)).toHaveLength(2);
  });

  it("has no more than eight days in words on its axis, from 0 to no further than it goes", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), (longest) => {
        const ticks = dayTicks(longest);
        expect(ticks[0]).toBe(0);
        expect(ticks.length).toBeLessThanOrEqual(8);
        expect(ticks.at(-1)).toBeLessThanOrEqual(longest);
      }),
    );
  });
});
