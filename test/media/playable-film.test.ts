import { existsSync } from "node:fs";
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { clipPath, makeClipFolder, newClipName } from "@/server/media/clip-store";
import { filmToServe, makePlayableFilm } from "@/server/media/playable-film";
import { type ClipFacts, probeClip } from "@/server/media/probe-clip";
import { converterPath } from "@/server/media/run-converter";
import { stripClip } from "@/server/media/strip-clip";
import { hevcClip, hevcClipWith } from "../helpers/hevc-clip";
import { scratchFolder, writeScratch } from "../helpers/scratch-folder";

const folder = scratchFolder();
const clips = join(folder, "clips");
const program = await converterPath(process.env.PATH ?? "");

/** Takes a film in as the academy does. */
async function takenIn(bytes: Uint8Array) {
  const storageName = newClipName();
  await makeClipFolder(clips, storageName);
  const stripped = await stripClip(await writeScratch(folder, bytes), clipPath(clips, storageName, "copy"));
  if (stripped.problem !== null) throw new Error(stripped.problem);
  return { ...stripped.facts, storageName };
}

async function copied(film: ClipFacts & { storageName: string }) {
  const shares: number[] = [];
  const outcome = await makePlayableFilm(clips, film, { program: program ?? "" }, (share) =>
    shares.push(share),
  );
  const probe = outcome.made ? await probeClip(clipPath(clips, film.storageName, "playable")) : null;
  return { outcome, shares, facts: probe?.problem === null ? probe : null };
}

describe.skipIf(program === null)("a copy that every browser draws", () => {
  it.each([
    ["of a wavering rate, with sound", async () => hevcClip(), 96, 64],
    ["turned by 90 degrees", () => hevcClipWith({ rotationDeg: 90 }), 64, 96],
    ["turned by 180 degrees", () => hevcClipWith({ rotationDeg: 180 }), 96, 64],
    ["turned by 270 degrees", () => hevcClipWith({ rotationDeg: 270 }), 64, 96],
    ["with its start cut off", () => hevcClipWith({ trimMs: 205 }), 96, 64],
    ["stretched eight times", () => hevcClipWith({ slower: 8 }), 96, 64],
  ])("of a film %s has the same frames at the same times, upright", async (_, bytes, widthPx, heightPx) => {
    const film = await takenIn(await bytes());
    expect(film.codec).toMatch(/^h(ev|vc)1/);
    const { outcome, shares, facts } = await copied(film);
    expect(outcome).toEqual({ made: true });
    expect(facts).toMatchObject({ widthPx, heightPx, rotationDeg: 0, hasSound: film.hasSound, tagNames: [] });
    expect(facts?.codec).toMatch(/^avc1\.64/);
    expect(facts?.frameTimesMs).toHaveLength(film.frameTimesMs.length);
    for (const [frame, timeMs] of film.frameTimesMs.entries()) {
      expect(Math.abs((facts?.frameTimesMs[frame] ?? Number.NaN) - timeMs)).toBeLessThan(0.05);
    }
    expect(facts?.keyFrameIndexes.length).toBeGreaterThanOrEqual(Math.ceil(film.frameTimesMs.length / 12));
    expect(shares.at(-1)).toBeGreaterThan(0.5);
  });

  it("is not kept when it does not show the frames that are on record", async () => {
    const film = await takenIn(hevcClip());
    const other = { ...film, frameTimesMs: film.frameTimesMs.with(3, (film.frameTimesMs[3] ?? 0) + 1) };
    expect((await copied(other)).outcome).toMatchObject({ made: false, why: "another_film" });
    expect(existsSync(clipPath(clips, film.storageName, "playable"))).toBe(false);
    expect(existsSync(`${clipPath(clips, film.storageName, "playable")}.converted`)).toBe(false);
  });
});

describe("what is sent to a player", () => {
  const row = (storageName: string, conversion: string | null) => ({
    ...{ storageName, conversion, contentType: "video/mp4", sha256: "ab", byteCount: 1000 },
  });

  it("is the copy once it is made, told from the original by its tag", async () => {
    const storageName = newClipName();
    const path = clipPath(clips, storageName, "playable");
    await mkdir(join(path, ".."), { recursive: true });
    await writeFile(path, "12345");
    expect(await filmToServe(clips, row(storageName, "made"))).toEqual({
      ...{ path, contentType: "video/mp4", etag: "ab-playable", byteCount: 5 },
    });
    expect((await filmToServe(clips, row(storageName, "running"))).etag).toBe("ab");
  });

  it("is the original while there is no copy, also where one is on record and its file is gone", async () => {
    const storageName = newClipName();
    const original = { path: clipPath(clips, storageName, "copy"), etag: "ab", byteCount: 1000 };
    expect(await filmToServe(clips, row(storageName, null))).toMatchObject(original);
    expect(await filmToServe(clips, row(storageName, "made"))).toMatchObject(original);
  });
});
