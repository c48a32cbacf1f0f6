import type { Connections, Db } from "@/db/client";
import type { Actor, AthleteScope, Relation } from "@/server/domain/access/relation";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

/** What a request brings: made anew for each, by the route handler, by a page, or by a test. */
export interface Context {
  connections: Connections;
  actor: Actor | null;
  nowMs: number;
  /** The caller's own id for this command; the same id and content is answered the same way again. */
  requestId: string | null;
  /** Address of the caller, for limits on tries. */
  address: string;
}

/** What a procedure's body gets: the caller known, the right checked, the athlete (if any) loaded. */
export interface Scope {
  /** The reading connection in a query, the open transaction in a command. */
  db: Db;
  actor: Actor;
  nowMs: number;
  relations: ReadonlySet<Relation>;
  /** The athlete the action is about; for a procedure without one, reading it throws. */
  athlete: AthleteScope;
  /** Today at the athlete's home site. */
  today: CalendarDay;
}

/** The scope of a procedure that people who are not signed in may call. */
export interface OpenScope {
  db: Db;
  actor: Actor | null;
  nowMs: number;
  address: string;
}
