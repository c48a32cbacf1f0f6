import { bodyWithin } from "./body-within";
import { isSameOrigin, refuseRequest, requestIdIn } from "./request-guard";

/** The most one command may carry, in bytes: a whole draft is a twentieth of it. Common practice, no source. */
const MAX_BODY_BYTES = 1_000_000;

/**
 * A command's request with its body read, or the answer that turns it away: from another site, not JSON, without an id
 * of its own, or longer than a command may be, whatever its header says.
 */
export async function commandRequest(request: Request): Promise<Request | Response> {
  if (!isSameOrigin(request)) return refuseRequest(403, "This request came from another site.");
  if (!request.headers.get("content-type")?.startsWith("application/json")) {
    return refuseRequest(415, "Commands are sent as JSON.");
  }
  if (requestIdIn(request.headers) === null) {
    return refuseRequest(400, "A command carries an idempotency-key, a UUID of its own.");
  }
  const body = await bodyWithin(request, MAX_BODY_BYTES);
  if (body === null) return refuseRequest(413, "That is more than one request may carry.");
  const { url, method, headers, signal } = request;
  return new Request(url, { method, headers, body, signal });
}
