import { describe, expect, it } from "vitest";
import { type ConsentRow, hasConsent, VIDEO_CONSENT } from "@/server/domain/people/consent";

function row(
  kind: ConsentRow["kind"],
  atMs: number,
  textVersion: string = VIDEO_CONSENT.version,
): ConsentRow {
  return { purpose: "video", kind, textVersion, atMs };
}

describe("consent to video", () => {
  it("is missing until somebody gives it", () => {
    expect(hasConsent([], "video")).toBe(false);
  });

  it("follows the latest row, in whatever order they come", () => {
    expect(hasConsent([row("withdrawn", 2), row("given", 3), row("given", 1)], "video")).toBe(true);
    expect(hasConsent([row("given", 1), row("withdrawn", 2)], "video")).toBe(false);
  });

  it("is asked again when the text has changed", () => {
    expect(hasConsent([row("given", 1, "video-0")], "video")).toBe(false);
  });

  it("takes a withdrawal at the same instant for the answer", () => {
    expect(hasConsent([row("given", 1), row("withdrawn", 1)], "video")).toBe(false);
  });
});
