import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** The port of the academy under test. */
export const PORT = 3977;

/** Where the journeys begin: Wed 25 Nov 2026, 09:30 in New York. */
export const START_MS = Date.UTC(2026, 10, 25, 14, 30);

const home = fileURLToPath(new URL("../../", import.meta.url));

/**
 * Starts the built demo academy on a folder of its own with a clock of its own; returns what stops it. With
 * SLABSIDE_E2E_FOLDER set, an academy that somebody else started on that folder is used and left running.
 */
export default async function startAcademy(): Promise<() => Promise<void>> {
  if (process.env.SLABSIDE_E2E_FOLDER) return async () => undefined;
  const folder = mkdtempSync(join(tmpdir(), "slabside-e2e-"));
  process.env.SLABSIDE_E2E_FOLDER = folder;
  const stop = await serve(folder, PORT);
  await drawJourneyClips(folder);
  return async () => {
    await stop();
    rmSync(folder, { recursive: true, force: true });
  };
}

/** Runs the start command on a folder, its clock standing at the journeys' beginning; returns what stops it. */
export async function serve(
  folder: string,
  port: number,
  words: string[] = [],
): Promise<() => Promise<void>> {
  const clockFile = join(folder, "clock");
  writeFileSync(clockFile, String(START_MS));
  const server = spawn(process.execPath, ["server/start.mjs", ...words], {
    cwd: home,
    env: {
      ...process.env,
      PORT: String(port),
      SLABSIDE_DATA: join(folder, "data"),
      CLOCK_FILE: clockFile,
      LOG_LEVEL: "warn",
    },
    stdio: ["ignore", "pipe", "inherit"],
  });
  await untilRunning(server);
  return async () => {
    const ended = new Promise((end) => server.once("exit", end));
    server.kill("SIGTERM");
    await ended;
  };
}

function untilRunning(server: ChildProcess): Promise<void> {
  return new Promise((running, failed) => {
    let printed = "";
    server.stdout?.on("data", (part) => {
      printed += part;
      if (printed.includes("Stop with Ctrl+C")) running();
    });
    server.once("exit", (code) => failed(new Error(`The academy ended with ${code}. It said: ${printed}`)));
  });
}

/** The two phone clips of the journeys, real H.264 files: `first.mp4` and `reply.mp4` in the folder. */
function drawJourneyClips(folder: string): Promise<void> {
  const drawn = { throws: "R", ageYears: 12, view: "open_side", widthPx: 640, heightPx: 360 };
  const orders = [
    {
      outPath: join(folder, "first.mp4"),
      parameters: { ...drawn, faults: { collapsing_front_knee: 0.9, dropping_glove: 0.8 } },
    },
    { outPath: join(folder, "reply.mp4"), parameters: { ...drawn, faults: { collapsing_front_knee: 0.2 } } },
  ];
  const list = join(folder, "journey-clips.json");
  writeFileSync(list, JSON.stringify(orders));
  const child = spawn(process.execPath, ["--import", "tsx", "seed/clips/draw-child.ts", list], {
    cwd: home,
    stdio: ["ignore", "ignore", "inherit"],
  });
  return new Promise((drawnAll, failed) => {
    child.once("exit", (code) =>
      code === 0 ? drawnAll() : failed(new Error("The journey's clips were not drawn.")),
    );
  });
}
