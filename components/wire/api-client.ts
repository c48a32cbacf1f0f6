"use client";
import { createTRPCClient, httpBatchLink, httpLink, splitLink } from "@trpc/client";
import superjson from "superjson";
import type { AppRouter } from "@/server/api/root";

/** What a browser still carries to its end once the page is left: 64 KiB of all requests under way, by the Fetch standard. */
const OUTLIVES_PAGE_CHARS = 20_000;

/** Sends a command so that it arrives even when the page is left meanwhile, as long as it is of the usual size. */
function fetchToItsEnd(address: RequestInfo | URL | string, options?: RequestInit) {
  const { body } = options ?? {};
  const keepalive = typeof body === "string" && body.length <= OUTLIVES_PAGE_CHARS;
  return fetch(address, { ...options, keepalive });
}

/**
 * The browser's line to the procedures. Each command carries an id of its own, so that a repeat changes nothing; a
 * question asked with one is sent like a command, for those too long for an address.
 */
export const apiClient = createTRPCClient<AppRouter>({
  links: [
    splitLink({
      condition: ({ type, context }) => type === "mutation" || context.requestId !== undefined,
      true: httpLink({
        url: "/api/trpc",
        transformer: superjson,
        methodOverride: "POST",
        fetch: (address, options) => fetchToItsEnd(address, options as RequestInit),
        headers: ({ op }) => ({
          "idempotency-key": String(op.context.requestId ?? crypto.randomUUID()),
        }),
      }),
      false: httpBatchLink({ url: "/api/trpc", transformer: superjson, maxItems: 10 }),
    }),
  ],
});
