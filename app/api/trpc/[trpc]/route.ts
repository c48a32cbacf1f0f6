import { fetchRequestHandler } from "@trpc/server/adapters/fetch";
import { commandRequest } from "@/server/api/command-request";
import { reportFault } from "@/server/api/report-fault";
import { requestContext } from "@/server/api/request-context";
import { appRouter } from "@/server/api/root";

async function handle(request: Request): Promise<Response> {
  const accepted = request.method === "POST" ? await commandRequest(request) : request;
  if (accepted instanceof Response) return accepted;
  return fetchRequestHandler({
    endpoint: "/api/trpc",
    req: accepted,
    router: appRouter,
    createContext: requestContext,
    maxBatchSize: 10,
    /* A question that carries a whole book is too long for an address. */
    allowMethodOverride: true,
    onError: ({ error, path }) => reportFault(error, path ?? "unknown"),
  });
}

export { handle as GET, handle as POST };
