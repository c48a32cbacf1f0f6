import type { Relation } from "@/server/domain/access/relation";
import { may } from "@/server/domain/access/rights";

/** For how many days a link may open a report. Common practice, no source. */
export const LINK_DAYS = [7, 30, 90] as const;
export type LinkDays = (typeof LINK_DAYS)[number];

/** So many links of one athlete may be open at a time: more are out of sight. Common practice, no source. */
export const MOST_OPEN_LINKS = 10;

/** How a link stands. `stopped`: whoever made it no longer decides for the athlete. */
export const LINK_STATES = ["open", "expired", "revoked", "stopped"] as const;
export type LinkState = (typeof LINK_STATES)[number];

/** What decides whether a link opens. Instants in epoch milliseconds. */
export interface ReportLink {
  expiresAtMs: number;
  revokedAtMs: number | null;
}

/** The instant from which a link made now opens no more. */
export function linkExpiresAtMs(nowMs: number, days: LinkDays): number {
  return nowMs + days * 86_400_000;
}

/**
 * How a link stands at an instant. It rests on the right of whoever made it and ends with that: on the athlete's
 * eighteenth birthday, with a guardianship, with a disabled account.
 * @param maker what its maker is to the athlete now
 */
export function linkState(
  { expiresAtMs, revokedAtMs }: ReportLink,
  maker: ReadonlySet<Relation>,
  nowMs: number,
): LinkState {
  if (revokedAtMs !== null) return "revoked";
  if (nowMs >= expiresAtMs) return "expired";
  return may("report.share", maker) ? "open" : "stopped";
}
