import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { DraftKeeper, REST_MS, type SaveOutcome } from "@/components/reviews/room-draft-keeper";

/** A server that answers as it is told, one answer after another; the last goes on. */
function desk(...answers: (SaveOutcome | "saved")[]) {
  const saves: { document: string; version: number; atMs: number }[] = [];
  const save = async (document: string, version: number): Promise<SaveOutcome> => {
    const answer = answers[Math.min(saves.length, answers.length - 1)] ?? "saved";
    saves.push({ document, version, atMs: Date.now() });
    await new Promise((wait) => setTimeout(wait, 50));
    return answer === "saved" ? { kind: "saved", version: version + 1, savedAtMs: Date.now() } : answer;
  };
  return { saves, keeper: new DraftKeeper<string>("", 0, null, save) };
}

beforeEach(() => {
  vi.useFakeTimers({ now: 0 });
});
afterEach(() => {
  vi.useRealTimers();
});

describe("a draft that is being written", () => {
  it("is on the server within a second of the last change, in one save for a burst of changes", async () => {
    const { keeper, saves } = desk();
    for (const text of ["h", "hi", "hip"]) {
      keeper.change(text);
      await vi.advanceTimersByTimeAsync(100);
    }
    await vi.advanceTimersByTimeAsync(800);
    expect(saves).toEqual([{ document: "hip", version: 0, atMs: 200 + REST_MS }]);
    expect(keeper.status).toEqual({ kind: "saved", savedAtMs: 650 });
    expect(keeper.isSaved).toBe(true);
  });

  it("saves what changed while a save was on its way, over the new version", async () => {
    const { keeper, saves } = desk();
    keeper.change("a");
    await vi.advanceTimersByTimeAsync(REST_MS + 20);
    keeper.change("ab");
    expect(keeper.isSaved).toBe(false);
    await vi.advanceTimersByTimeAsync(2000);
    expect(saves.map(({ document, version }) => [document, version])).toEqual([
      ["a", 0],
      ["ab", 1],
    ]);
  });

  it("is saved at once when asked, and says at which version", async () => {
    const { keeper, saves } = desk();
    keeper.change("a");
    const version = keeper.flush();
    await vi.advanceTimersByTimeAsync(60);
    expect(await version).toBe(1);
    expect(saves).toHaveLength(1);
    expect(await keeper.flush()).toBe(1);
  });

  it("says that it is offline, tries again by itself, and loses nothing written meanwhile", async () => {
    const { keeper, saves } = desk({ kind: "unreachable" }, { kind: "unreachable" }, "saved");
    keeper.change("a");
    await vi.advanceTimersByTimeAsync(REST_MS + 60);
    expect(keeper.status).toEqual({ kind: "offline" });
    keeper.change("ab");
    await vi.advanceTimersByTimeAsync(5000);
    expect(keeper.status.kind).toBe("saved");
    expect(saves.at(-1)).toMatchObject({ document: "ab", version: 0 });
  });

  it("is null to whoever wants to send it while it cannot be saved", async () => {
    const { keeper } = desk({ kind: "unreachable" });
    keeper.change("a");
    const version = keeper.flush();
    await vi.advanceTimersByTimeAsync(60);
    expect(await version).toBeNull();
    keeper.close();
  });

  it("is tried again at once when the line is back", async () => {
    const { keeper, saves } = desk({ kind: "unreachable" }, "saved");
    keeper.change("a");
    await vi.advanceTimersByTimeAsync(REST_MS + 60);
    keeper.retry();
    await vi.advanceTimersByTimeAsync(60);
    expect(saves).toHaveLength(2);
    expect(keeper.status.kind).toBe("saved");
  });
});

describe("a newer draft elsewhere", () => {
  it("stops saving until one of the two is chosen, and keeps both", async () => {
    const { keeper, saves } = desk({ kind: "changed_meanwhile" }, "saved");
    keeper.change("mine");
    await vi.advanceTimersByTimeAsync(REST_MS + 60);
    expect(keeper.status).toEqual({ kind: "conflict" });
    keeper.change("mine, longer");
    await vi.advanceTimersByTimeAsync(5000);
    expect(saves).toHaveLength(1);
    const saving = keeper.overwrite(7);
    await vi.advanceTimersByTimeAsync(60);
    await saving;
    expect(saves.at(-1)).toMatchObject({ document: "mine, longer", version: 7 });
    expect(keeper.status.kind).toBe("saved");
  });

  it("takes the place of this one when it is chosen", async () => {
    const { keeper, saves } = desk({ kind: "changed_meanwhile" }, "saved");
    keeper.change("mine");
    await vi.advanceTimersByTimeAsync(REST_MS + 60);
    keeper.adopt({ document: "theirs", version: 7, savedAtMs: 5 });
    expect([keeper.document, keeper.isSaved]).toEqual(["theirs", true]);
    keeper.change("theirs and mine");
    await vi.advanceTimersByTimeAsync(2000);
    expect(saves.at(-1)).toMatchObject({ document: "theirs and mine", version: 7 });
  });

  it("stops for good, with the reason, when the draft is no longer this coach's to write", async () => {
    const { keeper, saves } = desk({ kind: "refused", sentence: "Dana took this round." });
    keeper.change("mine");
    await vi.advanceTimersByTimeAsync(REST_MS + 60);
    expect(keeper.status).toEqual({ kind: "stopped", sentence: "Dana took this round." });
    keeper.change("more");
    await vi.advanceTimersByTimeAsync(10_000);
    expect(saves).toHaveLength(1);
  });

  it("tells its listeners of every change until they leave", async () => {
    const { keeper } = desk();
    const told = vi.fn();
    const leave = keeper.listen(told);
    keeper.change("a");
    expect(told).toHaveBeenCalledTimes(1);
    leave();
    keeper.change("ab");
    expect(told).toHaveBeenCalledTimes(1);
  });

  it("goes on with a newer draft it is shown when nothing is unsaved, and keeps its own words for a choice when something is", async () => {
    const { keeper, saves } = desk();
    keeper.catchUp({ document: "typed just before the reload", version: 3, savedAtMs: 5 });
    expect(keeper.document).toBe("typed just before the reload");
    expect(await keeper.flush()).toBe(3);
    keeper.catchUp({ document: "an older answer", version: 2, savedAtMs: 4 });
    expect(keeper.document).toBe("typed just before the reload");
    keeper.change("mine");
    keeper.catchUp({ document: "theirs", version: 4, savedAtMs: 6 });
    expect(keeper.document).toBe("mine");
    expect(keeper.status).toEqual({ kind: "conflict" });
    await vi.advanceTimersByTimeAsync(2000);
    expect(saves).toEqual([]);
  });
});
