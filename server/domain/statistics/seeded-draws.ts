/**
 * A source of numbers from 0 up to, not including, 1, always the same for one seed. Method: the text is hashed to 32 bits
 * (FNV-1a), which start a mulberry32 sequence; fit for drawing samples and inventing things, not for secrets.
 * @example seededDraws("a")() === seededDraws("a")() // true
 */
export function seededDraws(seed: string): () => number {
  let state = hashOf(seed);
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** The values in an order that the draws decide; every order is as likely as any other. */
export function shuffledBy<Value>(draw: () => number, values: readonly Value[]): Value[] {
  return values
    .map((value) => ({ value, place: draw() }))
    .sort((a, b) => a.place - b.place)
    .map(({ value }) => value);
}

/** FNV-1a, 32 bits. @example hashOf("a") // 0xe40c292c, of the list of its authors */
export function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index += 1) {
    hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  }
  return hash >>> 0;
}
