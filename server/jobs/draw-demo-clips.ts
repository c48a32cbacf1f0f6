import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import { createInterface } from "node:readline";
import type { Connections } from "@/db/client";
import { clipsToDraw, markClipDrawn } from "@/server/data/demo-clips";
import { unitOfWork } from "@/server/data/unit-of-work";
import { fileFps } from "@/server/domain/clips/frame-rate";
import { clipPath, makeClipFolder, sha256OfFile } from "@/server/media/clip-store";
import { probeClip } from "@/server/media/probe-clip";

/** One clip of the demo that is to be drawn, as the seed wrote it down. */
interface DemoClip {
  clipId: string;
  storageName: string;
  parameters: Record<string, unknown>;
}

/** Where the demo's clips and their list lie. */
export interface DemoFolders {
  /** The data folder; the list is `demo-clips.json` in it. */
  dataFolder: string;
  clipsFolder: string;
}

/**
 * Draws the demo's clips that are not there yet, one at a time in a child process of low priority, and makes each
 * watchable as it is done. Stopped at any point, it goes on with the next one the next time. Nothing happens in an
 * academy without a list.
 */
export async function drawDemoClips(on: Connections, folders: DemoFolders): Promise<void> {
  const list = `${folders.dataFolder}/demo-clips.json`;
  if (!existsSync(/* turbopackIgnore: true */ list)) return;
  const clips = JSON.parse(await readFile(/* turbopackIgnore: true */ list, "utf8")) as DemoClip[];
  const listed = new Map(clips.map((clip) => [clip.clipId, clip]));
  const missing = (await clipsToDraw(on.reader)).flatMap((clipId) => listed.get(clipId) ?? []);
  if (missing.length === 0) return;
  const drafts = new Map(missing.map((clip) => [`${folders.dataFolder}/${clip.clipId}.mp4`, clip]));
  const orders = [...drafts].map(([outPath, clip]) => ({ outPath, parameters: clip.parameters }));
  const orderPath = `${folders.dataFolder}/demo-orders.json`;
  await writeFile(/* turbopackIgnore: true */ orderPath, JSON.stringify(orders));
  for await (const outPath of drawn(orderPath)) {
    const clip = drafts.get(outPath);
    if (clip) await takeIn(on, folders, clip, outPath);
  }
  await rm(/* turbopackIgnore: true */ orderPath, { force: true });
}

async function* drawn(orderPath: string): AsyncGenerator<string> {
  const child = spawn(process.execPath, ["--import", "tsx", "seed/clips/draw-child.ts", orderPath], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  const stop = () => child.kill();
  process.once("exit", stop);
  for await (const line of createInterface({ input: child.stdout })) {
    yield (JSON.parse(line) as { outPath: string }).outPath;
  }
  process.off("exit", stop);
}

async function takeIn(on: Connections, folders: DemoFolders, clip: DemoClip, outPath: string) {
  const probe = await probeClip(outPath);
  if (probe.problem !== null) throw new Error(`A demo clip could not be read: ${probe.problem}.`);
  const sha256 = await sha256OfFile(outPath);
  await makeClipFolder(folders.clipsFolder, clip.storageName);
  const poster = outPath.replace(/\.mp4$/, ".jpg");
  const hasPoster = existsSync(/* turbopackIgnore: true */ poster);
  if (hasPoster) await rename(poster, clipPath(folders.clipsFolder, clip.storageName, "poster"));
  await rename(outPath, clipPath(folders.clipsFolder, clip.storageName, "copy"));
  await rm(/* turbopackIgnore: true */ outPath.replace(/\.mp4$/, ".json"), { force: true });
  const { size } = await stat(clipPath(folders.clipsFolder, clip.storageName, "copy"));
  await unitOfWork(on, (tx) =>
    markClipDrawn(tx, clip.clipId, {
      storageName: clip.storageName,
      contentType: "video/mp4",
      byteCount: size,
      sha256,
      durationMs: probe.durationMs,
      widthPx: probe.widthPx,
      heightPx: probe.heightPx,
      rotationDeg: probe.rotationDeg,
      codec: probe.codec,
      /* Drawn as a family says of a clip filmed at normal speed. */
      capturedFps: fileFps(probe.frameTimesMs),
      captureSource: "sender",
      frameCount: probe.frameTimesMs.length,
      frameTimesMs: JSON.stringify(probe.frameTimesMs),
      hasPoster,
    }),
  );
}
