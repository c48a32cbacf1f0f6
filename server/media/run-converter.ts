import { spawn } from "node:child_process";
import { access, constants } from "node:fs/promises";
import { setPriority } from "node:os";
import { delimiter, join } from "node:path";
import { createInterface } from "node:readline";

/** What is converted, and to where. */
export interface ConversionOrder {
  from: string;
  to: string;
  durationMs: number;
  widthPx: number;
  heightPx: number;
}

/** How long the program may be silent, and how long it may take in all. */
export interface Patience {
  silentMs: number;
  totalMs: number;
}

/** Two minutes without a word and two hours in all: a long clip on a small machine. Common practice, no source. */
export const PATIENCE: Patience = { silentMs: 120_000, totalMs: 7_200_000 };

/** How a run ended: the file is there, the program gave up, or it was stopped. `said` is the end of its complaints. */
export type ConverterOutcome = { ended: "done" | "failed" | "stopped"; said: string };

/** Complaints that are kept for the log, in characters. */
const KEPT_WORDS = 500;

/** The lowest priority there is: nobody who uses the academy waits for a copy. */
const LOWEST_PRIORITY = 19;

/** Where the program `ffmpeg` lies among the folders of a search path, or null when it is not there. */
export async function converterPath(searchPath: string): Promise<string | null> {
  for (const folder of searchPath.split(delimiter).filter(Boolean)) {
    const path = join(/* turbopackIgnore: true */ folder, "ffmpeg");
    const isThere = await access(path, constants.X_OK).then(
      () => true,
      () => false,
    );
    if (isThere) return path;
  }
  return null;
}

/**
 * Makes an H.264 copy of a film that every browser draws, upright, with every frame at its own time and nothing told of
 * place or device. The program is run directly, never by a shell, at the lowest priority, and is killed when it is
 * silent or busy for too long. `onShare` hears how much is done, 0 to 1. What lies at `to` counts only when it is done.
 */
export async function runConverter(
  program: string,
  order: ConversionOrder,
  onShare: (share: number) => void,
  patience: Patience = PATIENCE,
): Promise<ConverterOutcome> {
  const newer = await runOnce(program, converterArguments(order, "-fps_mode"), order, onShare, patience);
  const isOlder = newer.ended === "failed" && newer.said.includes("fps_mode");
  return isOlder ? runOnce(program, converterArguments(order, "-vsync"), order, onShare, patience) : newer;
}

/** Programs older than 2022 know the option that leaves frame times alone by its former name. */
function converterArguments(order: ConversionOrder, timesOption: "-fps_mode" | "-vsync"): string[] {
  const even = (px: number) => Math.max(2, Math.round(px / 2) * 2);
  return [
    ...["-hide_banner", "-nostdin", "-loglevel", "error", "-progress", "pipe:1", "-y"],
    ...["-protocol_whitelist", "file", "-f", "mov", "-i", `file:${order.from}`],
    ...["-map", "0:v:0", "-map", "0:a:0?", "-map_metadata", "-1", "-map_chapters", "-1"],
    ...["-vf", `scale=${even(order.widthPx)}:${even(order.heightPx)},setsar=1`],
    ...[timesOption, "passthrough", "-enc_time_base", "1/90000", "-video_track_timescale", "90000"],
    ...[
      "-c:v",
      "libx264",
      "-preset",
      "veryfast",
      "-crf",
      "20",
      "-pix_fmt",
      "yuv420p",
      "-g",
      "12",
      "-bf",
      "0",
    ],
    ...["-c:a", "aac", "-f", "mp4", `file:${order.to}`],
  ];
}

function runOnce(
  program: string,
  args: readonly string[],
  { durationMs }: ConversionOrder,
  onShare: (share: number) => void,
  patience: Patience,
): Promise<ConverterOutcome> {
  return new Promise((resolve) => {
    const child = spawn(program, args, { stdio: ["ignore", "pipe", "pipe"] });
    let said = "";
    let isStopped = false;
    const stop = () => {
      isStopped = true;
      child.kill("SIGKILL");
    };
    const total = setTimeout(stop, patience.totalMs);
    let silent = setTimeout(stop, patience.silentMs);
    process.once("exit", stop);
    const end = (ended: ConverterOutcome["ended"]) => {
      clearTimeout(total);
      clearTimeout(silent);
      process.off("exit", stop);
      resolve({ ended, said: said.trim() });
    };
    child.once("spawn", () => lowerPriority(child.pid));
    child.once("error", (error) => {
      said = error.message;
      end("failed");
    });
    child.once("close", (code) => end(isStopped ? "stopped" : code === 0 ? "done" : "failed"));
    child.stderr.on("data", (words: Buffer) => {
      said = (said + words.toString("utf8")).slice(-KEPT_WORDS);
    });
    createInterface({ input: child.stdout }).on("line", (line) => {
      clearTimeout(silent);
      silent = setTimeout(stop, patience.silentMs);
      const share = shareOf(line, durationMs);
      if (share !== null) onShare(share);
    });
  });
}

function lowerPriority(pid: number | undefined): void {
  try {
    if (pid !== undefined) setPriority(pid, LOWEST_PRIORITY);
  } catch {
    /* A system that does not let it be lowered runs it as it is; one that has ended already needs none. */
  }
}

/** How far a line of the program's progress says it is, or null when it says nothing of it. */
function shareOf(line: string, durationMs: number): number | null {
  const doneUs = /^out_time_us=(\d+)$/.exec(line)?.[1];
  if (doneUs === undefined || durationMs <= 0) return null;
  return Math.min(1, Number(doneUs) / 1000 / durationMs);
}
