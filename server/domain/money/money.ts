/** An ISO 4217 alphabetic code, e.g. "USD". Amounts beside it are integers in its minor unit ("cents"). */
export type CurrencyCode = string;

/**
 * Digits after the point where ISO 4217 list one does not say 2. Codes in test/reference/money.json are checked
 * against it; the rest from memory of the list. Written out because Intl follows CLDR, which differs (IQD, for one).
 */
const MINOR_UNITS_OTHER_THAN_TWO: Readonly<Record<string, readonly string[]>> = {
  0: "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF".split(" "),
  3: "BHD IQD JOD KWD LYD OMR TND".split(" "),
  4: ["CLF", "UYW"],
};

/** Whether the text is a currency code that this runtime knows, in capitals. */
export function isCurrency(code: string): boolean {
  return /^[A-Z]{3}$/.test(code) && Intl.supportedValuesOf("currency").includes(code);
}

/**
 * How many digits the currency's minor unit stands behind the point (ISO 4217): USD 2, JPY 0, BHD 3, CLF 4.
 * A code that is not in the list above counts as 2.
 */
export function minorUnits(currency: CurrencyCode): number {
  const found = Object.entries(MINOR_UNITS_OTHER_THAN_TWO).find(([, codes]) => codes.includes(currency));
  return found === undefined ? 2 : Number(found[0]);
}

/**
 * The amount as a plain decimal, exact because it is cut from the digits and never divided: for files that machines
 * read. No grouping, no currency, `-` for a negative amount, never "-0.00".
 * @throws RangeError when the amount is not a safe integer (the caller's fault)
 * @example decimalText(-1250, "USD") // "-12.50"
 */
export function decimalText(amountCents: number, currency: CurrencyCode): `${number}` {
  assertMinorAmount(amountCents);
  const units = minorUnits(currency);
  const digits = String(Math.abs(amountCents)).padStart(units + 1, "0");
  const whole = digits.slice(0, digits.length - units);
  const fraction = units === 0 ? "" : `.${digits.slice(-units)}`;
  return `${amountCents < 0 ? "-" : ""}${whole}${fraction}` as `${number}`;
}

/**
 * Reads what a person typed as a price: digits with an optional point and at most the currency's digits behind it.
 * @returns the amount in minor units, or null when the text is anything else ("1,5", "1.005" in USD, "", "1e3")
 * @example minorFromDecimal("65.5", "USD") // 6550
 */
export function minorFromDecimal(text: string, currency: CurrencyCode): number | null {
  const parts = /^(-?)(\d{1,15})(?:\.(\d+))?$/.exec(text.trim());
  if (parts === null) return null;
  const [, sign = "", whole = "", fraction = ""] = parts;
  const units = minorUnits(currency);
  if (fraction.length > units) return null;
  const amountCents = Number(`${whole}${fraction.padEnd(units, "0")}`);
  if (!Number.isSafeInteger(amountCents)) return null;
  return sign === "-" && amountCents !== 0 ? -amountCents : amountCents;
}

/**
 * The amount for a person, with its currency, by the habits of a locale.
 * @throws RangeError when the amount is not a safe integer, or the code is not three letters
 * @example formatMoney(1248000, "USD") // "$12,480.00"
 */
export function formatMoney(amountCents: number, currency: CurrencyCode, locale = "en-US"): string {
  const units = minorUnits(currency);
  return new Intl.NumberFormat(locale, {
    style: "currency",
    currency,
    minimumFractionDigits: units,
    maximumFractionDigits: units,
  }).format(decimalText(amountCents, currency));
}

/**
 * The sum of amounts in one currency; 0 for none.
 * @throws RangeError when an amount or the sum is not a safe integer, so that a total is never silently rounded
 */
export function sumCents(amounts: readonly number[]): number {
  let total = 0;
  for (const amount of amounts) {
    assertMinorAmount(amount);
    total += amount;
    assertMinorAmount(total);
  }
  return total;
}

function assertMinorAmount(amountCents: number): void {
  if (!Number.isSafeInteger(amountCents)) throw new RangeError(`Not a whole minor amount: ${amountCents}`);
}
