import { mkdirSync } from "node:fs";
import { copyFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { eq } from "drizzle-orm";
import { describe, expect, it } from "vitest";
import { clip } from "@/db/schema/clips";
import { WHO } from "../helpers/academy";
import { clipRoutes, routes } from "../helpers/clip-routes";
import { allClips, said } from "../helpers/clips";
import { hevcClip } from "../helpers/hevc-clip";
import { makeClip } from "../helpers/make-clip";
import { uploadWhole } from "../helpers/send-upload";
import { standIn } from "../helpers/stand-in-program";

const desk = clipRoutes();
const kit = WHO.child.athleteId;
const NOWHERE = { fraction: 0, atMostBytes: 0 };
const PATIENT = { silentMs: 20_000, totalMs: 20_000 };

const clipsFolder = () => join(desk.dataFolder, "clips");
const theClip = async () => {
  const [row] = await allClips(desk.academy);
  if (!row?.storageName) throw new Error("There is no clip.");
  return { ...row, storageName: row.storageName };
};

/** Sends a film that not every browser draws, as a guardian does. @returns what the sender's page hears */
async function sent(bytes = hevcClip()) {
  desk.signIn(WHO.guardian);
  const { response } = await uploadWhole(kit, bytes);
  const told = await response.json();
  const caller = await desk.academy.as(WHO.guardian);
  await caller.rounds.send({ athleteId: kit, roundId: null, clips: [said(told.clipId)] });
  return told;
}

async function withProgram(does: Parameters<typeof standIn>[1], patience = PATIENT) {
  const program = await standIn(desk.dataFolder, does);
  return convert({ program, patience });
}

function convert(converter: { program: string; patience?: typeof PATIENT } | null, reserve = NOWHERE) {
  return routes.convertClips(desk.academy.connections, { clipsFolder: clipsFolder(), converter, reserve });
}

/** What the stand-in hands over: an H.264 film with the very frame times of the one that was sent. */
async function readyCopy(shiftMs = 0) {
  const times: number[] = JSON.parse((await theClip()).frameTimesMs ?? "[]");
  const frameTimesMs = times.map((timeMs, at) => (at === 4 ? timeMs + shiftMs : timeMs));
  await writeFile(join(desk.dataFolder, "made.mp4"), await makeClip({ frameTimesMs }));
}

/** As long as a program of the lowest priority may take to be heard of on a busy machine. */
const PATIENCE_MS = 25_000;

/** What a question answers once its answer is not null. */
async function until<Answer>(ask: () => Promise<Answer | null>): Promise<Answer> {
  for (const startMs = performance.now(); performance.now() - startMs < PATIENCE_MS; ) {
    const answer = await ask();
    if (answer !== null) return answer;
    await new Promise((wait) => setTimeout(wait, 5));
  }
  throw new Error("It never came.");
}

/** Lets a stand-in that waits for it go on. */
const letGoOn = () => writeFile(join(desk.dataFolder, "go"), "");

async function watched() {
  const { id } = await theClip();
  const response = await routes.clipVideo(new Request(`http://academy.test/api/clips/${id}/video`), id);
  return { etag: response.headers.get("etag"), bytes: (await response.arrayBuffer()).byteLength };
}

describe("a film that not every browser draws", () => {
  it("is kept, and its sender hears at once when no copy can be made", async () => {
    expect(await sent()).toMatchObject({ conversion: "no_program" });
    expect(await theClip()).toMatchObject({ state: "ready", conversion: "no_program", frameCount: 36 });
    await convert(null);
    expect((await theClip()).conversion).toBe("no_program");
  });

  it("waits for its copy where the program is there; one that all browsers draw never does", async () => {
    mkdirSync(join(desk.dataFolder, "bin"));
    await copyFile(await standIn(desk.dataFolder, "failing"), join(desk.dataFolder, "bin", "ffmpeg"));
    desk.searchIn(join(desk.dataFolder, "bin"));
    expect(await sent()).toMatchObject({ conversion: "waiting" });
    const caller = await desk.academy.as(WHO.guardian);
    const { response } = await uploadWhole(kit, await makeClip());
    expect(await response.json()).toEqual({ clipId: expect.any(String) });
    const waiting = await caller.clips.waiting({ athleteId: kit });
    expect(waiting).toMatchObject([{ conversion: null }]);
  });

  it("is served as its copy once that is made, and the table of frames stays as it was", async () => {
    await sent();
    const before = await theClip();
    const original = await watched();
    await readyCopy();
    await withProgram("copies");
    const after = await theClip();
    expect(after).toMatchObject({ ...before, conversion: "made", conversionShare: null });
    const copy = await watched();
    expect(copy.etag).not.toBe(original.etag);
    expect(copy.bytes).not.toBe(original.bytes);
    expect(desk.files("clips")).toEqual(["copy", "playable"]);
  });

  it("is never served as a copy with a frame elsewhere in time", async () => {
    await sent();
    const original = await watched();
    await readyCopy(2);
    await withProgram("copies");
    expect((await theClip()).conversion).toBe("failed");
    expect(await watched()).toEqual(original);
    expect(desk.files("clips")).toEqual(["copy"]);
  });

  it.each(["failing", "slow", "hanging", "endless"] as const)(
    "stays as it came when the program is %s, and is not tried again",
    async (does) => {
      await sent();
      await withProgram(does, { silentMs: 500, totalMs: 700 });
      expect(await theClip()).toMatchObject({ state: "ready", conversion: "failed", conversionShare: null });
      expect(desk.files("clips")).toEqual(["copy"]);
      await readyCopy();
      await withProgram("copies");
      expect((await theClip()).conversion).toBe("failed");
    },
  );

  it("is begun again by the next run when the server ended in the middle of it", async () => {
    await sent();
    await desk.academy.db.update(clip).set({ conversion: "running", conversionShare: 0.4 });
    await readyCopy();
    await withProgram("copies");
    expect((await theClip()).conversion).toBe("made");
  });

  it("shows how far its copy is while it is being made", async () => {
    await sent();
    await desk.academy.db.update(clip).set({ durationMs: 1000 });
    const running = withProgram("part of the way");
    const seen = await until(async () => {
      const { conversion, conversionShare } = await theClip();
      return conversion === "running" && (conversionShare ?? 0) > 0 ? conversionShare : null;
    });
    expect(seen).toBe(0.4);
    await letGoOn();
    await running;
    expect(await theClip()).toMatchObject({ conversion: "failed", conversionShare: null });
  });

  it("waits while the disk has no room for a copy", async () => {
    await sent();
    await readyCopy();
    const program = await standIn(desk.dataFolder, "copies");
    await convert({ program }, { fraction: 1, atMostBytes: Number.MAX_SAFE_INTEGER });
    expect((await theClip()).conversion).toBe("waiting");
  });

  it("is deleted with its copy when its time is over", async () => {
    await sent();
    await readyCopy();
    await withProgram("copies");
    const { clock, connections } = desk.academy;
    clock.ms += 400 * 86_400_000;
    await routes.expireClips(connections, clock.ms);
    expect(desk.files("clips")).toEqual([]);
    expect((await allClips(desk.academy))[0]).toMatchObject({ state: "expired", storageName: null });
  });

  it("leaves nothing behind when it is deleted while its copy is being made", async () => {
    await sent();
    await readyCopy();
    const { db } = desk.academy;
    const running = withProgram("part of the way");
    await until(async () => ((await theClip()).conversion === "running" ? true : null));
    await db.update(clip).set({ state: "expired" }).where(eq(clip.athleteId, kit));
    await letGoOn();
    await running;
    expect(desk.files("clips")).toEqual([]);
  });
});
