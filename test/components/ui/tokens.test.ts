import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";

const css = readFileSync("components/ui/tokens.css", "utf8");

function tokensAfter(selector: string): Record<string, string> {
  const start = css.indexOf(`${selector} {`);
  expect(start, selector).toBeGreaterThanOrEqual(0);
  const block = css.slice(start, css.indexOf("}", start));
  return Object.fromEntries(
    [...block.matchAll(/--([\w-]+):\s*([^;]+);/g)].map((match) => [match[1], match[2]]),
  );
}

/** Relative luminance as WCAG 2.2 defines it (https://www.w3.org/TR/WCAG22/#dfn-relative-luminance). */
function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast ratio as WCAG 2.2 defines it (https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio). */
function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

const themes = {
  light: tokensAfter(":root"),
  "dark by the system": tokensAfter(':root:not([data-theme="light"])'),
  "dark by choice": tokensAfter(':root[data-theme="dark"]'),
};

const textPairs: [text: string, ground: string][] = [
  ...["ink", "dusk", "clay", "grass", "slate", "wheat"].flatMap((text): [string, string][] => [
    [text, "ground"],
    [text, "surface"],
  ]),
  ["on-clay", "clay"],
  ["ground", "ink"],
  ["ink", "clay-tint"],
  ["clay", "clay-tint"],
  ["ink", "grass-tint"],
  ["grass", "grass-tint"],
  ["ink", "slate-tint"],
  ["slate", "slate-tint"],
  ["dusk", "slate-tint"],
  ["ink", "wheat-tint"],
  ["wheat", "wheat-tint"],
];

describe("colours", () => {
  it("measures black on white as 21 to 1, as WCAG says", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 5);
  });

  for (const [theme, tokens] of Object.entries(themes)) {
    for (const [text, ground] of textPairs) {
      it(`${theme}: ${text} on ${ground} can be read (4.5 to 1, WCAG 2.2 success criterion 1.4.3)`, () => {
        expect(contrast(tokens[text] ?? "", tokens[ground] ?? "")).toBeGreaterThanOrEqual(4.5);
      });
    }

    for (const ground of ["ground", "surface"]) {
      it(`${theme}: a field's border and the focus ring stand out on ${ground} (3 to 1, criterion 1.4.11)`, () => {
        expect(contrast(tokens.field ?? "", tokens[ground] ?? "")).toBeGreaterThanOrEqual(3);
        expect(contrast(tokens.slate ?? "", tokens[ground] ?? "")).toBeGreaterThanOrEqual(3);
      });
    }
  }

  it("are the same in the dark, whether the system or the person chose it", () => {
    expect(themes["dark by choice"]).toEqual(themes["dark by the system"]);
  });

  it("are all given again in the dark, so that none stays light by mistake", () => {
    const colours = Object.keys(themes.light).filter((name) => themes.light[name]?.startsWith("#"));
    for (const name of colours) expect(themes["dark by choice"], name).toHaveProperty(name);
  });
});

describe("style sheets of components", () => {
  const sheets = readdirSync("components", { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".module.css"))
    .map((file) => ({ file, text: readFileSync(join("components", file), "utf8") }));

  it("take every colour from the tokens", () => {
    expect(sheets.length).toBeGreaterThan(0);
    for (const { file, text } of sheets) {
      expect(text.match(/#[0-9a-f]{3,8}\b(?=[^{]*;)|\brgba?\(|\bhsla?\(/gi), file).toBeNull();
    }
  });

  it("use only tokens that there are", () => {
    /* A length that a screen sets for what stands in it, in its sheet or by its script. */
    const scripts = readdirSync("components", { recursive: true, encoding: "utf8" })
      .filter((file) => file.endsWith(".tsx"))
      .map((file) => readFileSync(join("components", file), "utf8"));
    const set = [css, ...sheets.map((sheet) => sheet.text)].flatMap((text) => [
      ...text.matchAll(/^\s*--([\w-]+):/gm),
    ]);
    const setByScript = scripts.flatMap((text) => [...text.matchAll(/"--([\w-]+)":/g)]);
    const known = new Set([...set, ...setByScript].map((match) => match[1]));
    for (const { file, text } of sheets) {
      const used = [...text.matchAll(/var\(--([\w-]+)/g)].map((match) => match[1] ?? "");
      const unknown = used.filter((name) => !known.has(name) && name !== "trigger-width");
      expect(unknown, file).toEqual([]);
    }
  });

  it("move for no longer than 150 ms, but for the steps of a spinner", () => {
    const quick = css.match(/--quick:\s*(\d+)ms/g) ?? [];
    expect(quick.map((text) => Number(text.match(/\d+/)?.[0])).every((ms) => ms <= 150)).toBe(true);
    for (const { file, text } of sheets.filter((sheet) => !sheet.file.includes("spinner"))) {
      const timed = text.match(/(?:transition|animation)[^;]*;/g) ?? [];
      for (const rule of timed) expect(rule, file).toContain("var(--quick)");
    }
  });
});
