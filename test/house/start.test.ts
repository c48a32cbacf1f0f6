import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdtempSync, writeFileSync } from "node:fs";
import { createServer, type Server } from "node:net";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { scratchFolder } from "../helpers/scratch-folder";
import { home } from "./house";

const root = scratchFolder();
const newFolder = () => mkdtempSync(join(root, "data-"));

/** A port that is listened on, until it is let go. */
async function takenPort(): Promise<{ port: number; server: Server }> {
  const server = createServer();
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  const address = server.address();
  return { server, port: typeof address === "object" && address ? address.port : 0 };
}

async function freePort(): Promise<string> {
  const { server, port } = await takenPort();
  await new Promise((closed) => server.close(closed));
  return String(port);
}

interface End {
  code: number | null;
  printed: string;
}

/** Runs the start command with settings of its own until it ends by itself; one that goes on is ended and has no code. */
async function start(settings: Record<string, string>, words: string[] = []): Promise<End> {
  const child = spawn(process.execPath, ["server/start.mjs", ...words], {
    cwd: home,
    env: {
      NODE_ENV: "production",
      PATH: process.env.PATH,
      HOME: process.env.HOME,
      PORT: await freePort(),
      SLABSIDE_DATA: newFolder(),
      ...settings,
    },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const tooLong = setTimeout(() => child.kill("SIGTERM"), 20_000);
  const end = await endOf(child);
  clearTimeout(tooLong);
  return end;
}

function endOf(child: ChildProcess): Promise<End> {
  let printed = "";
  child.stdout?.on("data", (part) => {
    printed += part;
  });
  child.stderr?.on("data", (part) => {
    printed += part;
  });
  return new Promise((ended) => child.once("close", (code) => ended({ code, printed: printed.trim() })));
}

const belowAFile = () => {
  const file = join(newFolder(), "a-file");
  writeFileSync(file, "");
  return join(file, "data");
};

const BAD: [what: string, settings: () => Record<string, string>, line: RegExp][] = [
  ["a port that is no number", () => ({ PORT: "none" }), /^Bad setting\. PORT: none is not a port; /],
  ["a port out of range", () => ({ PORT: "70000" }), /^Bad setting\. PORT: 70000 is not a port; /],
  [
    "a data folder that cannot be written",
    () => ({ SLABSIDE_DATA: belowAFile() }),
    /^The data folder .*a-file\/data cannot be written \(ENOTDIR\)\. .*SLABSIDE_DATA\.$/,
  ],
  [
    "a reserve that is no number",
    () => ({ UPLOAD_RESERVE_BYTES: "plenty" }),
    /^Bad setting\. UPLOAD_RESERVE_BYTES: /,
  ],
  ["a secret too short", () => ({ AUTH_SECRET: "short" }), /^Bad setting\. AUTH_SECRET: at least 32 /],
  ["a mail server without its kind", () => ({ SMTP_URL: "mail.example" }), /^Bad setting\. SMTP_URL: /],
  ["an address that is none", () => ({ PUBLIC_URL: "academy" }), /^Bad setting\. PUBLIC_URL: /],
  [
    "an opened host without the address people type",
    () => ({ HOST: "0.0.0.0" }),
    /^Bad setting\. PUBLIC_URL: needed when HOST opens the port/,
  ],
  [
    "a host of another machine",
    () => ({ HOST: "192.0.2.1", PUBLIC_URL: "https://academy.example" }),
    /Cannot listen on 192\.0\.2\.1:\d+ \(EADDRNOTAVAIL\)\./,
  ],
];

describe("the start command stops with a clear line", () => {
  it.each(BAD)("for %s", async (_, settings, line) => {
    const { code, printed } = await start(settings());
    expect(printed).toMatch(line);
    const told = printed.split("\n").filter((each) => !each.startsWith("HOST is "));
    expect(told).toHaveLength(1);
    expect(code).toBe(1);
  });

  it("for a port in use, and names another", async () => {
    const { server, port } = await takenPort();
    const { code, printed } = await start({ PORT: String(port) });
    server.close();
    expect(printed).toBe(
      `Port ${port} is in use. Stop the other program, or choose another: PORT=${port + 1} npm start`,
    );
    expect(code).toBe(1);
  });

  it("for an academy of one's own asked of a folder that holds the demo", async () => {
    const folder = newFolder();
    writeFileSync(join(folder, "academy.txt"), "demo\n");
    const { code, printed } = await start({ SLABSIDE_DATA: folder }, ["--empty"]);
    expect(printed).toBe(
      `${folder} already holds the demo academy. Name another folder in SLABSIDE_DATA, or empty it first: npm run db:reset`,
    );
    expect(code).toBe(1);
  });

  it("and has decided nothing about the folder while a setting is bad", async () => {
    const folder = newFolder();
    await start({ SLABSIDE_DATA: folder, LOG_LEVEL: "loud" });
    expect(existsSync(join(folder, "academy.txt"))).toBe(false);
  });
});
