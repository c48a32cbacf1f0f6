/**
 * The address a request came from, for limits on tries: the last one that `X-Forwarded-For` names, which is the one the
 * proxy in front saw itself. Whatever stands before it is the caller's own word.
 * @example callerAddress("6.6.6.6, 203.0.113.9") // "203.0.113.9"
 */
export function callerAddress(forwardedFor: string | null | undefined): string {
  return forwardedFor?.split(",").at(-1)?.trim() || "local";
}
