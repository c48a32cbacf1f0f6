import { randomBytes } from "node:crypto";
import { Refusal } from "@/server/domain/errors/refusal";
import { log } from "./log";

/** What the log keeps of an error: where it came from and why, and none of the values it was handed. */
export interface FaultFacts {
  name: string;
  words: string;
  at: string[];
  cause: FaultFacts | null;
}

/** Places of the stack that are kept, and causes followed: enough to find the line. Common practice, no source. */
const KEPT_PLACES = 12;
const KEPT_CAUSES = 3;

/**
 * An error as it may stand in the log. A failed statement is told without its values (names, addresses, hashes), a
 * refusal by its reason, a text that could not be read as JSON not at all.
 * @example faultFacts(new Error("There is no site sit_1.")).words // "There is no site sit_1."
 */
export function faultFacts(error: unknown, causesLeft = KEPT_CAUSES): FaultFacts {
  if (!(error instanceof Error)) return { name: typeof error, words: "", at: [], cause: null };
  const { name, cause, stack = "" } = error;
  const places = stack.split("\n").filter((line) => /^\s+at /.test(line));
  const goesOn = cause !== undefined && cause !== null && causesLeft > 0;
  return {
    name,
    words: wordsOf(error),
    at: places.slice(0, KEPT_PLACES).map((line) => line.trim()),
    cause: goesOn ? faultFacts(cause, causesLeft - 1) : null,
  };
}

function wordsOf(error: Error): string {
  if (error instanceof Refusal) return error.detail.reason;
  if (error instanceof SyntaxError) return "";
  return "query" in error && typeof error.query === "string" ? error.query : error.message;
}

/** Logs a fault under a fresh number, which is all that the person in front of it is told. @returns the number */
export function logFault(error: unknown, where: { path: string } | { job: string }, message: string): string {
  const reference = randomBytes(4).toString("hex");
  log.error({ reference, ...where, fault: faultFacts(error) }, message);
  return reference;
}
