import { describe, expect, it } from "vitest";
import type { Relation } from "@/server/domain/access/relation";
import { linkExpiresAtMs, linkState } from "@/server/domain/season-reports/report-link";

const DECIDES = new Set<Relation>(["anyone", "signed_in", "guardian"]);
const link = { expiresAtMs: linkExpiresAtMs(1000, 7), revokedAtMs: null };

describe("a link to a report", () => {
  it("lives for whole days", () => {
    expect(linkExpiresAtMs(1000, 7)).toBe(1000 + 7 * 24 * 3_600_000);
  });

  it.each([
    ["open before it expires", link, DECIDES, link.expiresAtMs - 1, "open"],
    ["expired from that instant on", link, DECIDES, link.expiresAtMs, "expired"],
    ["revoked whenever that was", { ...link, revokedAtMs: 1001 }, DECIDES, link.expiresAtMs, "revoked"],
    ["stopped when its maker decides no more", link, new Set<Relation>(["anyone"]), 2000, "stopped"],
    ["stopped when they only look on", link, new Set<Relation>(["granted_guardian"]), 2000, "stopped"],
  ] as const)("is %s", (_what, of, maker, nowMs, state) => {
    expect(linkState(of, maker, nowMs)).toBe(state);
  });
});
