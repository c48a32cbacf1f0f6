import { copyFileSync, mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { scratchFolder } from "../helpers/scratch-folder";
import { home, printedBy } from "./house";

type Files = Record<string, string>;

/** A folder that is set up as the project is, with these files in it. */
function plant(folder: string, files: Files): void {
  mkdirSync(join(folder, "test"), { recursive: true });
  for (const file of [".biome.json", "package.json", "test/no-random.grit", "test/dependency-cruiser.cjs"]) {
    copyFileSync(`${home}${file}`, join(folder, file));
  }
  writeFileSync(join(folder, "tsconfig.json"), '{ "compilerOptions": { "paths": { "@/*": ["./*"] } } }\n');
  symlinkSync(`${home}node_modules`, join(folder, "node_modules"));
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
}

const root = scratchFolder();

describe("the import rules", () => {
  const { forbidden } = createRequire(import.meta.url)("../dependency-cruiser.cjs") as {
    forbidden: { name: string }[];
  };
  const imports = (...paths: string[]) => paths.map((path) => `import "${path}";\n`).join("");
  const SOUND: Files = {
    "server/domain/calm/rule.ts": "export const rule = 1;\n",
    "server/domain/errors.ts": "export const refused = 1;\n",
    "db/schema/calm.ts": imports("drizzle-orm"),
    "server/data/calm.ts": imports("../domain/calm/rule", "../../db/schema/calm", "node:crypto"),
    "server/api/routers/calm.ts": imports("@/server/data/calm", "@/server/domain/errors", "zod"),
    "components/charts/chart.ts": imports("recharts", "@/server/domain/calm/rule"),
    "app/page.ts": imports("@/server/api/routers/calm", "@/components/charts/chart"),
    "seed/rows.ts": imports("@/server/data/calm"),
    "test/domain/calm/rule.test.ts": imports("@/server/domain/calm/rule", "vitest"),
  };
  /** The rule, the file at fault, and what stands in it. */
  const FAULTS: [rule: string, path: string, text: string][] = [
    ["no-cycles", "server/media/round.ts", imports("./back")],
    ["no-orphans", "server/media/alone.ts", "export const alone = 1;\n"],
    ["resolves", "server/media/lost.ts", imports("./nowhere")],
    ["domain-is-pure", "server/domain/calm/impure.ts", imports("node:fs")],
    [
      "distributions-stay-in-statistics",
      "server/domain/calm/luck.ts",
      imports("@stdlib/stats-base-dists-f-cdf"),
    ],
    ["domain-is-tested", "server/domain/calm/untested.ts", "export const untested = 1;\n"],
    ["data-sees-only-domain-and-db", "server/data/nosy.ts", imports("../media/back")],
    ["sql-stays-in-data", "server/media/sql.ts", imports("better-sqlite3")],
    ["tables-stay-in-data", "server/media/table.ts", imports("../../db/schema/calm")],
    ["routers-stand-alone", "server/api/routers/loud.ts", imports("./calm")],
    ["server-never-sees-ui", "server/media/screen.ts", imports("../../components/charts/chart")],
    ["pages-go-through-the-api", "app/short-cut.ts", imports("@/server/data/calm")],
    ["components-are-client-safe", "components/calm/server.ts", imports("@/server/api/routers/calm")],
    ["components-never-see-tables", "components/calm/table.ts", 'import type {} from "@/db/schema/calm";\n'],
    ["recharts-stays-in-charts", "components/calm/chart.ts", imports("recharts")],
    ["nobody-imports-tests-or-seed", "server/media/demo.ts", imports("../../seed/rows")],
    ["no-dev-deps-in-the-product", "server/media/luck.ts", imports("fast-check")],
  ];

  function violations(name: string, files: Files): { rule: { name: string }; from: string; to: string }[] {
    const folder = join(root, name);
    plant(folder, { ...SOUND, ...files });
    const told = printedBy(
      [
        `${home}node_modules/dependency-cruiser/bin/dependency-cruise.mjs`,
        ...["--config", "test/dependency-cruiser.cjs", "--output-type", "json"],
        ...["app", "components", "server", "db", "seed", "test/domain"],
      ],
      folder,
    );
    return JSON.parse(told).summary.violations;
  }

  let told: ReturnType<typeof violations> = [];

  beforeAll(() => {
    const planted = Object.fromEntries(FAULTS.map(([, path, text]) => [path, text]));
    told = violations("imports", { ...planted, "server/media/back.ts": imports("./round") });
  }, 60_000);

  it("let a sound house pass", () => {
    expect(violations("sound", {})).toEqual([]);
  });

  it("are all tried", () => {
    expect(FAULTS.map(([rule]) => rule).sort()).toEqual(forbidden.map(({ name }) => name).sort());
  });

  it.each(FAULTS)("fail by %s for %s", (rule, path) => {
    const found = told.filter(({ from, to }) => from === path || to === path);
    expect(found.map((each) => each.rule.name)).toContain(rule);
  });
});

describe("the linter", () => {
  const FAULTS: [rule: string, path: string, text: string][] = [
    ["lint/style/useFilenamingConvention", "server/media/badName.ts", "export const a = 1;\n"],
    ["lint/style/noDefaultExport", "server/media/default.ts", "export default 1;\n"],
    ["lint/suspicious/noExplicitAny", "server/media/any.ts", "export const a: any = 1;\n"],
    ["lint/style/noNonNullAssertion", "server/media/sure.ts", "export const a = (b?: { c: 1 }) => b!.c;\n"],
    ["lint/suspicious/noConsole", "server/media/loud.ts", "console.log(1);\n"],
    ["lint/style/noProcessEnv", "server/media/setting.ts", "export const a = process.env.PORT;\n"],
    ["lint/style/noRestrictedGlobals", "server/domain/calm/now.ts", "export const a = new Date();\n"],
    ["plugin", "server/data/luck.ts", "export const a = Math.random();\n"],
    ["lint/performance/noBarrelFile", "server/media/index.ts", 'export { a } from "./luck";\n'],
    [
      "lint/nursery/noFloatingPromises",
      "server/media/float.ts",
      "async function a() {}\nexport function b() {\n  a();\n}\n",
    ],
    [
      "lint/complexity/noExcessiveLinesPerFunction",
      "server/media/long.ts",
      `export function a(b: string[]) {\n${'  b.push("c");\n'.repeat(51)}}\n`,
    ],
    [
      "lint/style/noExcessiveLinesPerFile",
      "server/media/longer.ts",
      "export const a = 1;\n".replace("a", "b0") +
        Array.from({ length: 251 }, (_, at) => `export const a${at} = ${at};\n`).join(""),
    ],
    [
      "lint/complexity/noExcessiveCognitiveComplexity",
      "server/media/knot.ts",
      `export function a(b: number) {\n  let c = 0;\n${"  if (b > c && b < 9) c = b > 2 ? 1 : 2;\n".repeat(6)}  return c;\n}\n`,
    ],
  ];
  let told = "";

  beforeAll(() => {
    const folder = join(root, "lint");
    const sound: Files = { "server/media/sound.ts": "export const sound = 1;\n" };
    plant(folder, { ...sound, ...Object.fromEntries(FAULTS.map(([, path, text]) => [path, text])) });
    told = printedBy(
      [
        `${home}node_modules/@biomejs/biome/bin/biome`,
        ...["lint", "--colors=off", "--max-diagnostics=none", "."],
      ],
      folder,
    );
  }, 60_000);

  it.each(FAULTS)("fails by %s in %s", (rule, path) => {
    const heads = told.split("\n").filter((line) => line.includes(path));
    expect(
      heads.some((line) => line.includes(rule)),
      heads.join("\n"),
    ).toBe(true);
  });

  it("lets a sound file pass", () => {
    expect(told).not.toContain("sound.ts");
    expect(told).toMatch(/Checked \d+ files/);
  });
});
