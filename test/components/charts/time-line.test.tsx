import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { TimeLine } from "@/components/charts/time-line";

const markup = renderToStaticMarkup(
  <TimeLine
    label="Season"
    axis={{ startDay: "2026-09-01", endDay: "2026-12-01" }}
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
  it("names every item by its row, what it is, how it stands and when", () => {
    expect(markup).toContain('aria-label="Rounds: Round 3, answered, since Tue 20 Oct 2026"');
    expect(markup).toContain('aria-label="Outings: Outing, 51 pitches, Sat 21 Nov 2026"');
  });

  it("makes a link of what leads somewhere and a button of what does not", () => {
    expect(markup).toMatch(/<a [^>]*href="\/rounds\/3"/);
    expect(markup.match(/role="button"/g)).toHaveLength(1);
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
