/**
 * Whether a request comes from a page of this site: browsers name the fetching site or the origin on every POST, PATCH
 * and DELETE. A caller that names neither is no browser and carries no cookie by accident.
 */
export function isSameOrigin(request: Request): boolean {
  const site = request.headers.get("sec-fetch-site");
  if (site && site !== "same-origin" && site !== "none") return false;
  const origin = request.headers.get("origin");
  if (!origin) return true;
  const host = request.headers.get("x-forwarded-host") ?? request.headers.get("host");
  return URL.canParse(origin) && new URL(origin).host === host;
}

const REQUEST_ID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

/** The id that the caller gave a command, or null when it gave none or no UUID in lower case. */
export function requestIdIn(headers: Pick<Headers, "get">): string | null {
  const requestId = headers.get("idempotency-key");
  return requestId && REQUEST_ID.test(requestId) ? requestId : null;
}

/** A plain JSON refusal of a whole request. */
export function refuseRequest(status: number, sentence: string): Response {
  return Response.json(
    { sentence: `${sentence} Nothing was changed.` },
    { status, headers: { "cache-control": "no-store" } },
  );
}
