import { fetchRequestHandler } from "@trpc/server/adapters/fetch";
import { reportFault } from "@/server/api/report-fault";
import { requestContext } from "@/server/api/request-context";
import { isSameOrigin, refuseRequest } from "@/server/api/request-guard";
import { appRouter } from "@/server/api/root";

const MAX_BODY_BYTES = 1_000_000;

async function handle(request: Request): Promise<Response> {
  if (request.method === "POST") {
    if (!isSameOrigin(request)) return refuseRequest(403, "This request came from another site.");
    if (!request.headers.get("content-type")?.startsWith("application/json")) {
      return refuseRequest(415, "Commands are sent as JSON.");
    }
    if (Number(request.headers.get("content-length") ?? 0) > MAX_BODY_BYTES) {
      return refuseRequest(413, "That is more than one request may carry.");
    }
    if (!request.headers.get("idempotency-key")) {
      return refuseRequest(400, "A command carries an idempotency-key, a UUID of its own.");
    }
  }
  return fetchRequestHandler({
    endpoint: "/api/trpc",
    req: request,
    router: appRouter,
    createContext: requestContext,
    maxBatchSize: 10,
    onError: ({ error, path }) => reportFault(error, path ?? "unknown"),
  });
}

export { handle as GET, handle as POST };
