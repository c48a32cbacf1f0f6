/** The page that an address asks for, from 1; anything that is no page is the first. */
export function pageNumber(text: string | string[] | undefined): number {
  const number = Number(Array.isArray(text) ? text[0] : text);
  return Number.isInteger(number) && number >= 1 && number <= 10_000 ? number : 1;
}

/** One of the given words that an address asks for, or null. */
export function wordOf<Word extends string>(
  text: string | string[] | undefined,
  words: readonly Word[],
): Word | null {
  return words.find((word) => word === text) ?? null;
}
