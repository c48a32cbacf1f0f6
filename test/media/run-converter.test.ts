import { mkdirSync, readFileSync } from "node:fs";
import { chmod, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { converterPath, type Patience, runConverter } from "@/server/media/run-converter";
import { scratchFolder } from "../helpers/scratch-folder";
import { standIn } from "../helpers/stand-in-program";

const folder = scratchFolder();
const order = (to = join(folder, "to.mp4")) => ({
  from: join(folder, "from; touch x.mp4"),
  to,
  durationMs: 1000,
  widthPx: 1079,
  heightPx: 1920,
});

async function run(does: Parameters<typeof standIn>[1], patience?: Patience, to?: string) {
  const shares: number[] = [];
  const program = await standIn(folder, does);
  const outcome = await runConverter(program, order(to), (share) => shares.push(share), patience);
  return { outcome, shares };
}

describe("the program that copies films", () => {
  it("says how far it is, and that it is done", async () => {
    const { outcome, shares } = await run("slow");
    expect(outcome).toEqual({ ended: "done", said: "" });
    expect(shares).toEqual([0.2, 0.4, 0.6, 0.8]);
  });

  it("tells why it gave up", async () => {
    const { outcome } = await run("failing");
    expect(outcome).toEqual({ ended: "failed", said: "Conversion failed!" });
  });

  it("is stopped when it hangs without a word, also when it does not want to end", async () => {
    const { outcome } = await run("hanging", { silentMs: 300, totalMs: 60_000 });
    expect(outcome.ended).toBe("stopped");
  });

  it("is stopped when it takes too long, whatever it says", async () => {
    const { outcome, shares } = await run("endless", { silentMs: 60_000, totalMs: 400 });
    expect(outcome.ended).toBe("stopped");
    expect(shares).toEqual([]);
  });

  it("that is not there has failed", async () => {
    const outcome = await runConverter(join(folder, "nothing"), order(), () => undefined);
    expect(outcome).toMatchObject({ ended: "failed", said: expect.stringContaining("ENOENT") });
  });

  it("of an older kind is asked again in its own words", async () => {
    const to = join(folder, "older.mp4");
    const { outcome } = await run("older", undefined, to);
    expect(outcome.ended).toBe("done");
    expect(readFileSync(to, "utf8")).toBe("older");
  });

  it("gets paths as they are, never through a shell, at the lowest priority, with even sizes", async () => {
    const to = join(folder, "told.mp4");
    await run("telling", undefined, to);
    const { args, priority } = JSON.parse(readFileSync(to, "utf8"));
    expect(priority).toBe(19);
    expect(args).toContain(`file:${order().from}`);
    expect(args).toContain("scale=1080:1920,setsar=1");
    expect(args.slice(args.indexOf("-protocol_whitelist")).slice(0, 2)).toEqual([
      "-protocol_whitelist",
      "file",
    ]);
    expect(args.slice(args.indexOf("-bf")).slice(0, 2)).toEqual(["-bf", "0"]);
  });
});

describe("where the program lies", () => {
  it("is the first folder of the search path that has it and lets it be run", async () => {
    const [none, other, right] = ["none", "other", "right"].map((name) => join(folder, name));
    for (const each of [none, other, right]) mkdirSync(each ?? "");
    await writeFile(join(other ?? "", "ffmpeg"), "not to be run");
    await chmod(join(other ?? "", "ffmpeg"), 0o600);
    await writeFile(join(right ?? "", "ffmpeg"), "");
    await chmod(join(right ?? "", "ffmpeg"), 0o755);
    expect(await converterPath([none, "", right].join(":"))).toBe(join(right ?? "", "ffmpeg"));
    expect(await converterPath(none ?? "")).toBeNull();
    expect(await converterPath("")).toBeNull();
  });
});
