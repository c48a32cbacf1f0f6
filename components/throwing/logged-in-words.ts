import type { Logged } from "./throw-desk";

const UNREACHABLE =
  "The academy cannot be reached, and this phone keeps nothing more. What you entered is still on this page.";

/**
 * What became of throws, for whoever entered them. `isDone`: the form starts anew; otherwise it stays as it is.
 * @param what the throws in words, e.g. "30 pitches, bullpen, today"
 */
export function loggedInWords(outcome: Logged, what: string): { isDone: boolean; text: string } {
  switch (outcome.kind) {
    case "sent":
      return { isDone: true, text: `Logged: ${what}. Today: ${outcome.words}.` };
    case "kept":
      return { isDone: true, text: `Kept on this phone: ${what}. It will be sent when there is signal.` };
    case "refused":
      return { isDone: false, text: outcome.sentence };
    case "unreachable":
      return { isDone: false, text: UNREACHABLE };
  }
}
