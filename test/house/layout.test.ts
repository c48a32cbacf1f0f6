import { execFileSync } from "node:child_process";
import { basename } from "node:path";
import { describe, expect, it } from "vitest";
import { filesBelow, home, textOf } from "./house";

const TOP_LEVEL = [
  "app",
  "components",
  "db",
  "docs",
  "public",
  "seed",
  "server",
  "test",
  "DEVELOPERS.md",
  "README.md",
  "instrumentation.ts",
  "next.config.mjs",
  "package-lock.json",
  "package.json",
  "proxy.ts",
  "tsconfig.json",
];

/** Made by a command and never committed. */
const MADE = [
  "node_modules",
  "data",
  "next-env.d.ts",
  "tsconfig.tsbuildinfo",
  "test-results",
  "playwright-report",
];
const SOURCES = ["app", "components", "db", "seed", "server", "test"];
const BANNED = [
  "utils",
  "misc",
  "common",
  "lib",
  "services",
  "managers",
  "types",
  "util",
  "service",
  "manager",
];

/** Files that are kept under version control; empty where there is none. */
function trackedFiles(): string[] {
  try {
    const told = execFileSync("git", ["ls-files", "-z"], { cwd: home, encoding: "utf8", maxBuffer: 1 << 26 });
    return told.split("\0").filter(Boolean);
  } catch {
    return [];
  }
}

/** The parts of a path, each without what is after its first dot. */
const partsOf = (path: string) => path.split("/").map((part) => part.replace(/\..*$/, ""));

describe("the top level", () => {
  it("holds what it may hold and nothing else", async () => {
    const { readdirSync } = await import("node:fs");
    const strangers = readdirSync(home).filter(
      (name) => !name.startsWith(".") && ![...TOP_LEVEL, ...MADE].includes(name),
    );
    expect(strangers).toEqual([]);
  });

  it("keeps nothing of what commands make", () => {
    const kept = trackedFiles().filter((path) => MADE.includes(path.split("/")[0] ?? ""));
    expect(kept).toEqual([]);
  });
});

describe("names", () => {
  const paths = SOURCES.flatMap(filesBelow);

  it("are none of the drawers for what has no home; helpers are the tests' alone", () => {
    expect(paths.length).toBeGreaterThan(300);
    const drawers = paths.filter((path) => partsOf(path).some((part) => BANNED.includes(part)));
    const helpers = paths.filter((path) => !path.startsWith("test/") && partsOf(path).includes("helpers"));
    expect([...drawers, ...helpers]).toEqual([]);
  });

  it("of test files end in .test.ts, of journeys in .spec.ts", () => {
    const odd = filesBelow("test").filter(
      (path) =>
        /\b(test|spec)\b/.test(basename(path)) && !/\.(test\.tsx?|spec\.ts)$|^vitest/.test(basename(path)),
    );
    expect(odd).toEqual([]);
  });
});

describe("packages", () => {
  const { dependencies, devDependencies } = JSON.parse(textOf("package.json")) as Record<
    "dependencies" | "devDependencies",
    Record<string, string>
  >;

  it("are pinned exactly", () => {
    const loose = Object.entries({ ...dependencies, ...devDependencies }).filter(
      ([, version]) => !/^(npm:[a-z0-9-]+@)?\d+\.\d+\.\d+$/.test(version),
    );
    expect(loose).toEqual([]);
  });

  it("that ship and packages for development are apart", () => {
    expect(Object.keys(dependencies).filter((name) => name in devDependencies)).toEqual([]);
  });

  it("are locked without an address", () => {
    expect(textOf("package-lock.json")).not.toContain('"resolved"');
  });
});
