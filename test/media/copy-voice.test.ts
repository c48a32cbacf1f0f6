import { BufferSource, EncodedPacketSink, Input, MP4, WEBM } from "mediabunny";
import { describe, expect, it } from "vitest";
import { copyVoice, type VoiceCopy } from "@/server/media/copy-voice";
import { makeClip } from "../helpers/make-clip";
import { makeVoice } from "../helpers/make-voice";

async function copied(bytes: Uint8Array): Promise<VoiceCopy> {
  const copy = await copyVoice(bytes);
  if ("problem" in copy) throw new Error(`It was not copied: ${copy.problem}.`);
  return copy;
}

async function packetsOf(bytes: Uint8Array) {
  const input = new Input({ source: new BufferSource(bytes), formats: [WEBM, MP4] });
  const track = await input.getPrimaryAudioTrack();
  if (track === null) throw new Error("No sound.");
  const packets: { timestamp: number; data: string }[] = [];
  for await (const { timestamp, data } of new EncodedPacketSink(track).packets()) {
    packets.push({ timestamp: Math.round(timestamp * 1000), data: Buffer.from(data).toString("hex") });
  }
  return packets;
}

const text = (bytes: Uint8Array) => Buffer.from(bytes).toString("latin1");

describe("the copy of a recording", () => {
  it.each(["webm", "mp4"] as const)(
    "holds every packet of a %s as it was, and its length",
    async (container) => {
      const recorded = await makeVoice({ container, lengthMs: 3000 });
      const copy = await copied(recorded);
      expect(copy.contentType).toBe(`audio/${container}`);
      expect(Math.abs(copy.durationMs - 3000)).toBeLessThanOrEqual(25);
      expect(await packetsOf(copy.bytes)).toEqual(await packetsOf(recorded));
    },
  );

  it("begins with the first word, whenever the recorder began to count", async () => {
    const copy = await copied(await makeVoice({ lengthMs: 1000, beginsMs: 700 }));
    expect(Math.abs(copy.durationMs - 1000)).toBeLessThanOrEqual(25);
    expect((await packetsOf(copy.bytes))[0]?.timestamp).toBe(0);
  });

  it.each(["webm", "mp4"] as const)("of a %s carries no tag, and no day", async (container) => {
    const tags = { title: "Bullpen lane two", comment: "marker-of-a-device", date: new Date("2026-11-25") };
    const recorded = await makeVoice({ container, tags });
    expect(text(recorded)).toContain("marker-of-a-device");
    const copy = await copied(recorded);
    for (const word of ["Bullpen lane two", "marker-of-a-device", "2026"])
      expect(text(copy.bytes)).not.toContain(word);
  });

  it.each(["webm", "mp4"] as const)("of one %s is the same twice, byte for byte", async (container) => {
    const recorded = await makeVoice({ container });
    const [first, second] = [await copied(recorded), await copied(recorded)];
    expect(first.sha256).toBe(second.sha256);
    expect(first.sha256).toMatch(/^[0-9a-f]{64}$/);
  });
});

describe("what is no recording of a voice", () => {
  const cases: [string, () => Promise<Uint8Array>, string][] = [
    ["nothing at all", async () => new Uint8Array(), "empty"],
    ["a page", async () => Buffer.from("<!doctype html><script>alert(1)</script>"), "not_voice"],
    ["a film without sound", () => makeClip(), "not_voice"],
    ["a film with sound", () => makeClip({ hasSound: true }), "not_voice"],
    [
      "a codec that browsers do not record in",
      () => makeVoice({ container: "mp4", codec: "mp3" }),
      "not_voice",
    ],
    ["a beginning alone", async () => (await makeVoice()).subarray(0, 40), "not_voice"],
  ];
  it.each(cases)("%s", async (_, make, problem) => {
    expect(await copyVoice(await make())).toEqual({ problem });
  });
});
