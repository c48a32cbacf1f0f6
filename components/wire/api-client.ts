"use client";
import { createTRPCClient, httpBatchLink, httpLink, splitLink } from "@trpc/client";
import superjson from "superjson";
import type { AppRouter } from "@/server/api/root";

/** The browser's line to the procedures. Each command carries an id of its own, so that a repeat changes nothing. */
export const apiClient = createTRPCClient<AppRouter>({
  links: [
    splitLink({
      condition: (operation) => operation.type === "mutation",
      true: httpLink({
        url: "/api/trpc",
        transformer: superjson,
        headers: ({ op }) => ({
          "idempotency-key": String(op.context.requestId ?? crypto.randomUUID()),
        }),
      }),
      false: httpBatchLink({ url: "/api/trpc", transformer: superjson, maxItems: 10 }),
    }),
  ],
});
