import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { assertGuards, openSqlite } from "@/db/client";
import { academyKind } from "@/server/start/checks.mjs";
import { makeAcademy } from "../helpers/academy";
import { scratchFolder } from "../helpers/scratch-folder";
import { home, textOf } from "./house";

const root = scratchFolder();

/** The commands under a heading of docs/operations.md, one text a fenced block. */
function commandsUnder(heading: string): string[] {
  const section = textOf("docs/operations.md").split(`\n## ${heading}\n`)[1]?.split("\n## ")[0] ?? "";
  return [...section.matchAll(/^```sh\n([\s\S]*?)^```/gm)].map((found) => found[1] ?? "");
}

/** A project's folder with an academy's data in it. */
async function folderWithData() {
  const folder = mkdtempSync(join(root, "project-"));
  symlinkSync(`${home}node_modules`, join(folder, "node_modules"));
  writeFileSync(join(folder, "package.json"), '{ "type": "module" }\n');
  mkdirSync(join(folder, "data/clips/ab"), { recursive: true });
  writeFileSync(join(folder, "data/clips/ab/film"), "film");
  writeFileSync(join(folder, "data/auth-secret"), "secret");
  writeFileSync(join(folder, "data/academy.txt"), "own\n");
  const { sqlite } = await makeAcademy();
  sqlite.exec(`VACUUM INTO '${join(folder, "data/slabside.sqlite")}'`);
  return folder;
}

const shell = (commands: string, cwd: string) =>
  execFileSync("sh", ["-e", "-c", commands], { cwd, encoding: "utf8" });

/** Runs the documented command as npm would, from the project, with the folder's data. */
function backUpInto(folder: string, command: string | undefined) {
  const words = /^npm run db:backup -- (\S+)$/.exec(command?.trim() ?? "");
  return execFileSync(process.execPath, ["--import", "tsx", "db/backup.ts", join(folder, words?.[1] ?? "")], {
    cwd: home,
    env: { ...process.env, SLABSIDE_DATA: join(folder, "data") },
    encoding: "utf8",
    stdio: "pipe",
  });
}

function remarks(path: string): unknown[] {
  const sqlite = openSqlite(path);
  assertGuards(sqlite);
  const ids = sqlite.prepare("SELECT id FROM remark ORDER BY id").pluck().all();
  sqlite.close();
  return ids;
}

describe("the backup of docs/operations.md", () => {
  const [stopped, running] = commandsUnder("Backup");
  const [restore] = commandsUnder("Restore");

  it("beside a running server holds what was written a moment before, and is restored as it says", async () => {
    const folder = await folderWithData();
    const live = openSqlite(join(folder, "data/slabside.sqlite"));
    live.exec("INSERT INTO remark (id, text) VALUES ('rmk_last', 'written last')");
    expect(backUpInto(folder, running)).toContain("read through: whole");
    expect(() => backUpInto(folder, running)).toThrow(/is there already. Nothing was copied/);
    live.exec("INSERT INTO remark (id, text) VALUES ('rmk_later', 'after the copy')");
    live.close();
    shell((restore ?? "exit 1").replace("npm start", ""), folder);
    expect(remarks(join(folder, "data/slabside.sqlite"))).toEqual(["rmk_last"]);
    for (const name of ["clips/ab/film", "auth-secret", "academy.txt"]) {
      expect(existsSync(join(folder, "data", name)), name).toBe(true);
    }
  });

  it("of a stopped one is the whole folder", async () => {
    const folder = await folderWithData();
    shell(stopped ?? "exit 1", folder);
    expect(remarks(join(folder, "backup-of-data/slabside.sqlite"))).toEqual([]);
    expect(readFileSync(join(folder, "backup-of-data/clips/ab/film"), "utf8")).toBe("film");
    expect(textOf("README.md")).toContain(stopped?.trim());
  });
});

describe("what a data folder holds", () => {
  it("is decided by the first start", () => {
    const folder = mkdtempSync(join(root, "kind-"));
    expect(academyKind(folder, true)).toBe("own");
    expect(academyKind(folder, false)).toBe("own");
  });

  it("is forgotten when it is emptied, so that the next start decides anew", () => {
    const folder = mkdtempSync(join(root, "reset-"));
    expect(academyKind(folder, false)).toBe("demo");
    for (const name of ["slabside.sqlite", "demo-clips.json"]) writeFileSync(join(folder, name), "");
    mkdirSync(join(folder, "clips/ab"), { recursive: true });
    execFileSync(process.execPath, ["--import", "tsx", "db/reset.ts"], {
      cwd: home,
      env: { ...process.env, SLABSIDE_DATA: folder },
    });
    for (const name of ["slabside.sqlite", "demo-clips.json", "clips"]) {
      expect(existsSync(join(folder, name)), name).toBe(false);
    }
    expect(academyKind(folder, true)).toBe("own");
  });
});
