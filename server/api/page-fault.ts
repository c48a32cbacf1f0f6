import { logFault } from "@/server/log-fault";

/**
 * Logs why a page could not be read, and makes the error that is shown in its place: it holds the reference number, also
 * as the digest that the page of last resort names, and nothing else.
 */
export function pageFault(error: unknown): Error {
  const cause = error instanceof Error && error.cause ? error.cause : error;
  const digest = logFault(cause, { path: "a page" }, "a page could not be read");
  return Object.assign(new Error(`A page could not be read; it is logged under ${digest}.`), { digest });
}
