import { SESSION_KIND, SESSION_KINDS } from "../calendar/session-kind";

/** What can be charged: each kind of session, for each athlete that came, and a review. */
export const CHARGE_KINDS = [...SESSION_KINDS, "review"] as const;
export type ChargeKind = (typeof CHARGE_KINDS)[number];

/** The kind in words, as screens and files show it. */
export function chargeKindLabel(kind: ChargeKind): string {
  return kind === "review" ? "Review" : SESSION_KIND[kind].label;
}
