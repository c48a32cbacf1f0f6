const TYPED = /^(?:(\d{1,3})(?:\s+(1|2)\/3|\s*([⅓⅔])|\.([0-2]))?|(1|2)\/3|([⅓⅔]))$/;

/**
 * Outs from innings as they are typed: whole innings, thirds as a fraction, or the box score's own way, in which
 * ".1" is one out and ".2" two. Null when it says no innings.
 * @example outsOfInnings("2 1/3") // 7
 * @example outsOfInnings("2.2") // 8
 * @example outsOfInnings("2.5") // null
 */
export function outsOfInnings(typed: string): number | null {
  const found = TYPED.exec(typed.trim());
  if (!found) return null;
  const [, whole, ...thirds] = found;
  return Number(whole ?? 0) * 3 + outsOf(thirds.find((part) => part !== undefined) ?? "0");
}

function outsOf(third: string): number {
  if (third === "⅓") return 1;
  return third === "⅔" ? 2 : Number(third);
}

/**
 * Innings as they are read, without the word.
 * @param outs a whole number, 0 or more
 * @example inningsInWords(7) // "2 1/3"
 * @example inningsInWords(2) // "2/3"
 */
export function inningsInWords(outs: number): string {
  const whole = Math.floor(outs / 3);
  const thirds = outs % 3;
  if (thirds === 0) return String(whole);
  return whole === 0 ? `${thirds}/3` : `${whole} ${thirds}/3`;
}
