import type { Connections, Db } from "@/db/client";
import type { AthleteScope } from "@/server/domain/access/relation";
import type { Action } from "@/server/domain/access/rights";
import type { Scope } from "./context";
import { authorise } from "./procedures";
import { faultResponse } from "./refusal-response";
import { requestContext } from "./request-context";
import { isSameOrigin, refuseRequest } from "./request-guard";

/** What a route handler needs of its caller. */
export interface RouteRule {
  action: Action;
  /** Given when the action is about an athlete; null stands for no such thing. */
  locate?: (db: Db) => Promise<AthleteScope | null>;
}

/** What a route handler gets: the caller known, the right checked. It reads from `db` and writes in a unit of work. */
export interface RouteScope extends Scope {
  connections: Connections;
}

const READS = ["GET", "HEAD"];

/**
 * The scope of a request to a route handler, or the answer that turns it away: from another site, not signed in, or
 * without the right, which looks like there being no such thing.
 */
export async function guardRoute(request: Request, rule: RouteRule): Promise<RouteScope | Response> {
  if (!READS.includes(request.method) && !isSameOrigin(request)) {
    return refuseRequest(403, "This request came from another site.");
  }
  try {
    const context = await requestContext();
    const { action, locate } = rule;
    const scope = await authorise(
      locate ? { action, athlete: locate } : { action },
      context,
      context.connections.reader,
      undefined,
    );
    return Object.defineProperties({} as RouteScope, {
      ...Object.getOwnPropertyDescriptors(scope),
      connections: { value: context.connections },
    });
  } catch (error) {
    return faultResponse(error, new URL(request.url).pathname);
  }
}

/** Answers a request once it is let through; what goes wrong is answered in words too. */
export async function answerRoute(
  request: Request,
  rule: RouteRule,
  answer: (scope: RouteScope) => Promise<Response>,
): Promise<Response> {
  const scope = await guardRoute(request, rule);
  if (scope instanceof Response) return scope;
  try {
    return await answer(scope);
  } catch (error) {
    return faultResponse(error, new URL(request.url).pathname);
  }
}
