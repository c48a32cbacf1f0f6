import type { Action } from "@/server/domain/access/rights";

/** One thing a route handler does, and the right it needs. */
export interface RouteRight {
  method: "GET" | "HEAD" | "POST" | "PUT" | "PATCH" | "DELETE";
  /** The address as the folders under `app` spell it. */
  path: string;
  action: Action;
}

/** Every route handler of the academy's own, method by method; procedures and sign-in declare theirs elsewhere. */
export const ROUTE_RIGHTS: readonly RouteRight[] = [
  { method: "POST", path: "/api/uploads/[[...path]]", action: "clip.send" },
  { method: "HEAD", path: "/api/uploads/[[...path]]", action: "clip.send" },
  { method: "PATCH", path: "/api/uploads/[[...path]]", action: "clip.send" },
  { method: "DELETE", path: "/api/uploads/[[...path]]", action: "clip.send" },
  { method: "GET", path: "/api/clips/[clipId]/video", action: "clip.watch" },
  { method: "HEAD", path: "/api/clips/[clipId]/video", action: "clip.watch" },
  { method: "GET", path: "/api/clips/[clipId]/poster", action: "clip.watch" },
  { method: "HEAD", path: "/api/clips/[clipId]/poster", action: "clip.watch" },
  { method: "PUT", path: "/api/clips/[clipId]/poster", action: "clip.poster" },
  { method: "POST", path: "/api/rounds/[roundId]/voice", action: "review.write" },
  { method: "GET", path: "/api/voice/[voiceId]", action: "review.read" },
  { method: "HEAD", path: "/api/voice/[voiceId]", action: "review.read" },
  { method: "GET", path: "/api/exports/month", action: "ledger.export" },
];
