import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { makeAcademy } from "../helpers/academy";
import { DOCUMENTS, filesBelow, home, textOf } from "./house";

const { scripts } = JSON.parse(textOf("package.json")) as { scripts: Record<string, string> };

/** What stands between backticks, fenced blocks left out. */
function inlineCode(text: string): string[] {
  const prose = text.replaceAll(/^```[\s\S]*?^```/gm, "");
  return [...prose.matchAll(/`([^`\n]+)`/g)].map((found) => found[1] ?? "");
}

const ROOT_FILE =
  /^(README|DEVELOPERS)\.md$|^(package\.json|tsconfig\.json|proxy\.ts|instrumentation\.ts|next\.config\.mjs)$/;
const isPath = (code: string) =>
  (/^(app|server|db|components|test|seed|docs)\//.test(code) || ROOT_FILE.test(code)) &&
  !/[<>*\s]|\.\.\./.test(code);

/** Relative links, without what is after a hash. */
function linksOf(text: string): string[] {
  const all = [...text.matchAll(/\]\(([^)\s]+)\)/g)].map((found) => found[1] ?? "");
  return all.filter((link) => !/^[a-z]+:/.test(link)).map((link) => link.replace(/#.*$/, ""));
}

describe.each(DOCUMENTS)("%s", (path) => {
  const text = textOf(path);

  it("links to what is there", () => {
    const missing = linksOf(text).filter((link) => !existsSync(join(home, dirname(path), link)));
    expect(missing).toEqual([]);
  });

  it("names only paths that are there", () => {
    const missing = inlineCode(text).filter((code) => isPath(code) && !existsSync(`${home}${code}`));
    expect(missing).toEqual([]);
  });

  it("names only commands that are there", () => {
    const named = [...text.matchAll(/npm run ([\w:-]+)/g)].map((found) => found[1] ?? "");
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });
});

describe("the commands", () => {
  it("are each in DEVELOPERS.md", () => {
    const told = textOf("DEVELOPERS.md");
    const wordsFor = (name: string) =>
      name === "start" || name === "test" ? `npm ${name}` : `npm run ${name}`;
    expect(Object.keys(scripts).filter((name) => !told.includes(`| \`${wordsFor(name)}\` |`))).toEqual([]);
  });

  it("each run a file that is there", () => {
    const files = Object.values(scripts).flatMap((line) => line.match(/\S+\.(?:mjs|ts)\b/g) ?? []);
    expect(files.length).toBeGreaterThan(5);
    expect(files.filter((file) => !existsSync(`${home}${file}`))).toEqual([]);
  });
});

describe("the rules", () => {
  const rows = textOf("docs/rules.md")
    .split("\n")
    .filter((line) => line.startsWith("| ") && !line.startsWith("| rule |"))
    .map((line) => line.slice(2, -2).split(" | "));
  const pairs = (cell: string) =>
    [...cell.matchAll(/\[`?([^`\]]+)`?\]\(\.\.\/([^)]+)\)/g)].map((found) => ({
      name: found[1] ?? "",
      path: found[2] ?? "",
    }));

  it("each have a sentence, a function, a test and a source", () => {
    expect(rows.length).toBeGreaterThan(60);
    for (const [sentence, functions, tests, source, ...more] of rows) {
      expect(sentence).toMatch(/\.$/);
      expect(pairs(functions ?? "").length, sentence).toBeGreaterThan(0);
      expect(pairs(tests ?? "").length, sentence).toBeGreaterThan(0);
      expect(source?.trim().length, sentence).toBeGreaterThan(2);
      expect(more, sentence).toEqual([]);
    }
  });

  it("name functions that are exported where they say", async () => {
    for (const [, functions = ""] of rows) {
      for (const { name, path } of pairs(functions)) {
        const module = (await import(/* @vite-ignore */ `${home}${path}`)) as Record<string, unknown>;
        expect(module, `${name} of ${path}`).toHaveProperty(name);
      }
    }
  });

  it("name a test that speaks of the function, or goes through the procedures", () => {
    const unproven = rows.filter(([, functions = "", tests = ""]) => {
      const names = new RegExp(
        `\\b(${pairs(functions)
          .map(({ name }) => name)
          .join("|")})\\b`,
      );
      return !pairs(tests).some(({ path }) => path.startsWith("test/api/") || names.test(textOf(path)));
    });
    expect(unproven.map(([sentence]) => sentence)).toEqual([]);
  });

  it("name every file of the domain that exports a function", () => {
    const named = new Set(rows.flatMap(([, functions = ""]) => pairs(functions).map(({ path }) => path)));
    const missing = filesBelow("server/domain")
      .filter((path) => /^export (async )?function /m.test(textOf(path)))
      .filter((path) => !named.has(path));
    expect(missing).toEqual([]);
  });
});

describe("the data model", () => {
  const text = textOf("docs/data-model.md");
  const told = [...text.matchAll(/^\| `(\w+)` \| (append-only)?/gm)].map((found) => ({
    table: found[1] ?? "",
    isAppendOnly: found[2] !== undefined,
  }));

  it("tells of every table, and of none that is not there", async () => {
    const { sqlite } = await makeAcademy();
    const tables = sqlite
      .prepare(
        "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite%' AND name NOT LIKE '\\_\\_%' ESCAPE '\\'",
      )
      .pluck()
      .all();
    expect(told.map(({ table }) => table).sort()).toEqual(tables.sort());
  });

  it("calls append-only what the guards hold", async () => {
    const { APPEND_ONLY_TABLES } = await import("@/db/guards");
    const called = told.filter((each) => each.isAppendOnly).map(({ table }) => table);
    expect(called.sort()).toEqual([...APPEND_ONLY_TABLES].sort());
  });
});

describe("the settings", () => {
  it("are all in the README, and no other", () => {
    const read = [...textOf("server/env.ts").matchAll(/^ {2}([A-Z_]+):/gm)].map((found) => found[1]);
    const section = textOf("README.md").split("## Settings")[1]?.split("\n## ")[0] ?? "";
    const told = [...section.matchAll(/^\| `([A-Z_]+)` \|/gm)].map((found) => found[1]);
    expect(read.length).toBeGreaterThan(5);
    expect(told.sort()).toEqual(read.sort());
  });
});

describe("the screens", () => {
  it("are all listed, and no other", () => {
    const pages = filesBelow("app")
      .filter((path) => path.endsWith("/page.tsx"))
      .map((path) => path.replace(/^app|\/page\.tsx$/g, "").replaceAll(/\/\([^)]+\)/g, "") || "/");
    const told = [...textOf("docs/screens.md").matchAll(/^\| `(\/[^`]*)` \|(?! every)/gm)].map(
      (found) => found[1],
    );
    expect(told.sort()).toEqual(pages.sort());
  });
});

describe("the decisions", () => {
  const files = filesBelow("docs/decisions");

  it("are numbered without a gap and all in the index", () => {
    const numbers = files
      .map((path) => Number(path.slice("docs/decisions/".length).slice(0, 4)))
      .sort((a, b) => a - b);
    expect(numbers).toEqual(numbers.map((_, index) => index + 1));
    const index = textOf("docs/README.md");
    expect(files.filter((path) => !index.includes(`(${path.slice("docs/".length)})`))).toEqual([]);
  });

  it.each(files)("%s has a status, a context, what was weighed, a decision and its consequences", (path) => {
    const text = textOf(path);
    expect(text).toMatch(/^# \d+\. .+\n\nStatus: (accepted|replaced by \d+)\n/);
    const headings = [...text.matchAll(/^## (.+)$/gm)].map((found) => found[1]);
    expect(headings).toEqual(["Context", "What was weighed", "Decision", "Consequences"]);
  });
});
