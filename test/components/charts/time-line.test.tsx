import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { TimeLine } from "@/components/charts/time-line";

const markup = renderToStaticMarkup(
  <TimeLine
    label="Season"
    axis={{ startDay: "2026-09-01", endDay: "2026-12-01" }}
    whole={{ startDay: "2026-09-01", endDay: "2026-12-01" }}
    onAxis={() => {}}
    onOpen={() => {}}
    today="2026-11-26"
    rows={[
      { key: "rounds", label: "Rounds" },
      { key: "outings", label: "Outings" },
    ]}
    items={[
      {
        id: "r1",
        row: "rounds",
        kind: "span",
        startDay: "2026-10-20",
        endDay: null,
        label: "Round 3",
        state: "answered",
        href: "/rounds/3",
      },
      {
        id: "o1",
        row: "outings",
        kind: "mark",
        startDay: "2026-11-21",
        endDay: null,
        label: "Outing",
        state: "51 pitches",
      },
    ]}
  />,
);

describe("a time line on the page", () => {
  it("says what it is and which keys work it", () => {
    expect(markup).toContain('role="application"');
    expect(markup).toContain('aria-label="Season. Arrow keys go from point to point');
  });

  it("is one stop for the Tab key", () => {
    expect(markup.match(/tabindex="0"/gi)).toHaveLength(1);
  });

  it("has a place where what is pointed at is said", () => {
    expect(markup).toContain('aria-live="polite"');
  });

  it("needs no style attribute", () => {
    expect(markup).not.toContain("style=");
  });
});
