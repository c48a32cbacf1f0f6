import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  decimalText,
  formatMoney,
  isCurrency,
  minorFromDecimal,
  minorUnits,
  sumCents,
} from "@/server/domain/money/money";
import reference from "../../reference/money.json";

const currency = fc.constantFrom("USD", "JPY", "KWD", "CLF");
const amount = fc.integer({ min: Number.MIN_SAFE_INTEGER, max: Number.MAX_SAFE_INTEGER });

describe("minor units", () => {
  // ISO 4217, list one.
  it.each(Object.entries(reference.minorUnits.digits))("gives %s its %i digits", (code, digits) => {
    expect(minorUnits(code)).toBe(digits);
  });

  it.each([
    ["USD", true],
    ["usd", false],
    ["US", false],
    ["USDX", false],
    ["", false],
    ["QQQ", false],
  ])("reads %j as a currency: %s", (code, known) => {
    expect(isCurrency(code)).toBe(known);
  });
});

describe("an amount as decimal text", () => {
  it.each([
    [1234, "USD", "12.34"],
    [-1250, "USD", "-12.50"],
    [0, "USD", "0.00"],
    [-0, "USD", "0.00"],
    [5, "USD", "0.05"],
    [-5, "USD", "-0.05"],
    [99, "USD", "0.99"],
    [100, "USD", "1.00"],
    [1250, "JPY", "1250"],
    [1250, "BHD", "1.250"],
    [7, "CLF", "0.0007"],
    [Number.MAX_SAFE_INTEGER, "USD", "90071992547409.91"],
  ])("writes %i in %s as %s", (cents, code, text) => {
    expect(decimalText(cents, code)).toBe(text);
  });

  // IEEE 754: the same figures go wrong when a float is rounded to two places.
  it.each(reference.floatTraps.cases)("keeps $exact exact where a float loses it", (trap) => {
    expect(decimalText(trap.minor, trap.currency)).toBe(trap.exact);
    expect(Number(trap.exact).toFixed(2)).toBe(trap.twoPlacesByFloat);
  });

  it.each([1.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53])(
    "throws for %d, which is no whole amount",
    (bad) => {
      expect(() => decimalText(bad, "USD")).toThrow(RangeError);
    },
  );

  it("reads back every amount it writes, in currencies of 0, 2, 3 and 4 digits", () => {
    fc.assert(
      fc.property(fc.integer({ min: -(10 ** 14), max: 10 ** 14 }), currency, (cents, code) => {
        expect(minorFromDecimal(decimalText(cents, code), code)).toBe(cents + 0);
      }),
    );
  });
});

describe("a price that a person typed", () => {
  it.each([
    ["65.50", "USD", 6550],
    ["65.5", "USD", 6550],
    [" 65 ", "USD", 6500],
    ["-0", "USD", 0],
    ["007", "USD", 700],
    ["1250", "JPY", 1250],
  ])("reads %j in %s as %i", (text, code, cents) => {
    expect(minorFromDecimal(text, code)).toBe(cents);
  });

  it.each([
    ["", "USD"],
    ["1.005", "USD"],
    ["1.5", "JPY"],
    ["1,50", "USD"],
    ["1.", "USD"],
    [".5", "USD"],
    ["1e3", "USD"],
    ["$5", "USD"],
    ["999999999999999", "USD"],
    ["9999999999999999", "JPY"],
  ])("refuses %j in %s", (text, code) => {
    expect(minorFromDecimal(text, code)).toBeNull();
  });
});

describe("an amount for a person", () => {
  it.each([
    [1248000, "USD", "$12,480.00"],
    [-1250, "USD", "-$12.50"],
    [1250, "JPY", "¥1,250"],
    [Number.MAX_SAFE_INTEGER, "USD", "$90,071,992,547,409.91"],
  ])("shows %i %s as %s", (cents, code, text) => {
    expect(formatMoney(cents, code)).toBe(text);
  });

  it("shows ISO 4217's three digits for the Iraqi dinar, where the runtime's own data has none", () => {
    expect(formatMoney(1250, "IQD").replace(/\s/g, " ")).toBe("IQD 1.250");
  });

  it("shows the same digits as the decimal text, whatever the amount", () => {
    fc.assert(
      fc.property(amount, currency, (cents, code) => {
        expect(formatMoney(cents, code).replace(/[^\d.-]/g, "")).toBe(decimalText(cents, code));
      }),
    );
  });
});

describe("a sum of amounts", () => {
  it("is nought for none and exact for many", () => {
    expect(sumCents([])).toBe(0);
    expect(sumCents([10, 20, -5])).toBe(25);
  });

  it("throws rather than round when the sum leaves the whole numbers a double holds", () => {
    expect(() => sumCents([Number.MAX_SAFE_INTEGER, 1])).toThrow(RangeError);
    expect(() => sumCents([0.1])).toThrow(RangeError);
  });
});
