import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { Load } from "@/components/throwing/load";
import type { LoadAnswer } from "@/components/throwing/load-answer";
import { ThrowingCautions } from "@/components/throwing/throwing-cautions";

const EMPTY: LoadAnswer = { now: null, days: [], weeks: [], effort: [], year: ["Nothing."], monthsOff: [] };

const LOAD: LoadAnswer = {
  ...EMPTY,
  now: "Wed 25 Nov: 21.4 throws a day over the last 7 days, 18.8 over the last 28.",
  days: [{ day: "2026-11-25", throws: 37 }],
  weeks: [
    {
      ...{ weekOf: "2026-11-16", asOf: "2026-11-22", throws: 111, mean7: 15.857, mean28: null },
      ...{ coupled: null, uncoupled: null, weighted: null },
    },
    {
      ...{ weekOf: "2026-11-23", asOf: "2026-11-25", throws: 37, mean7: 21.4286, mean28: 18.75 },
      ...{ coupled: 1.142857, uncoupled: 1.2, weighted: 1.258167 },
    },
  ],
  effort: [
    {
      ...{ weekOf: "2026-11-09", sessions: 4, withoutEffort: 0 },
      ...{ load: 1890, monotony: 1.294551, strain: 2446.7 },
    },
    {
      ...{ weekOf: "2026-11-16", sessions: 2, withoutEffort: 1 },
      ...{ load: null, monotony: null, strain: null },
    },
  ],
};

/** What a reader reads: the markup without its tags. */
const read = (load: LoadAnswer) =>
  renderToStaticMarkup(<Load load={load} />)
    .replaceAll(/<[^>]+>/g, " ")
    .replaceAll("&#x27;", "'")
    .replaceAll(/\s+/g, " ");

describe("load on the page", () => {
  it("has every figure of the chart in a table, and a dash where there is none", () => {
    const markup = renderToStaticMarkup(<Load load={LOAD} />);
    const rows = [...markup.matchAll(/<tr role="row".*?<\/tr>/g)].map(([row]) =>
      [...row.matchAll(/<span class="[^"]*value[^"]*">(.*?)<\/span>/g)].map(([, cell]) => cell),
    );
    expect(rows).toContainEqual(["37", "21.43", "18.75", "1.14", "1.20", "1.26"]);
    expect(rows).toContainEqual(["111", "15.86", "–", "–", "–", "–"]);
    expect(rows).toContainEqual(["37"]);
  });

  it("shows load, monotony and strain by the sample's deviation, and whose effort is missing", () => {
    const text = read(LOAD);
    expect(text).toContain("the sample's, n − 1");
    expect(text).toMatch(/Load 1890 Monotony 1\.29 Strain 2447/);
    expect(text).toMatch(/2, 1 without effort/);
    expect(read({ ...LOAD, effort: [] })).not.toContain("Monotony");
  });

  it("has what was published against such ratios one tap away, with the papers", () => {
    const markup = renderToStaticMarkup(<Load load={LOAD} />);
    const folded = markup.split("<details").find((part) => part.includes("researchers hold against"));
    for (const paper of [
      "Lolli et al. 2019",
      "Windt and Gabbett 2019",
      "Impellizzeri et al. 2020",
      "Impellizzeri et al. 2021",
    ]) {
      expect(folded).toContain(paper);
    }
  });

  it("judges nothing: no word of harm, zones or advice, and no colour but ink", () => {
    const markup = renderToStaticMarkup(<Load load={LOAD} />);
    expect(read(LOAD)).not.toMatch(/injur|risk|danger|safe|zone|optimal|sweet|should|warning/i);
    const colours = [...markup.matchAll(/(?:stroke|fill)="([^"]+)"/g)].map(([, colour]) => colour);
    expect(new Set(colours)).toEqual(new Set(["var(--ink)", "none", "currentColor"]));
  });

  it("keeps to sentences and the criticism while nothing is on the log", () => {
    const text = read(EMPTY);
    expect(text).toContain("Nothing.");
    expect(text).toContain("What researchers hold against such ratios");
    expect(text).not.toContain("Coupled:");
  });
});

describe("the cautions on the page", () => {
  const text = renderToStaticMarkup(<ThrowingCautions />);

  it.each(["never a permission", "physician", "Pain stops all throwing", "describe", "medical advice"])(
    "say: %s",
    (words) => {
      expect(text).toContain(words);
    },
  );
});
