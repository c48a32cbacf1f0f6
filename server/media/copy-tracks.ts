import type { EncodedPacket, Input, InputAudioTrack, InputVideoTrack, Output } from "mediabunny";
import { EncodedAudioPacketSource, EncodedPacketSink, EncodedVideoPacketSource } from "mediabunny";

type TrackCopy = {
  packets: AsyncGenerator<EncodedPacket, void, unknown>;
  add: (packet: EncodedPacket) => Promise<void>;
  close: () => void;
};

/**
 * Copies the main video and sound of `input` into `output` as they are stored, packet by packet: no picture is
 * decoded, times before zero (an edit that trims the start) stay before zero, and the turn of the picture is kept.
 * Nothing else is copied: no tags, no track names, no location or sensor tracks, no second camera.
 * Sound the output cannot hold is left out. `shiftMs` is added to every time.
 *
 * @returns false when the output cannot hold the video's codec; nothing is written then.
 */
export async function copyTracks(input: Input, output: Output, shiftMs = 0): Promise<boolean> {
  const video = await input.getPrimaryVideoTrack();
  const videoCopy = video === null ? null : await copyOfVideo(video, output);
  if (videoCopy === null) return false;
  const sound = await input.getPrimaryAudioTrack();
  const soundCopy = sound === null ? null : await copyOfSound(sound, output);
  await output.start();
  await addInTimeOrder(soundCopy === null ? [videoCopy] : [videoCopy, soundCopy], shiftMs / 1000);
  await output.finalize();
  return true;
}

async function copyOfVideo(track: InputVideoTrack, output: Output): Promise<TrackCopy | null> {
  const codec = await track.getCodec();
  const decoderConfig = await track.getDecoderConfig();
  if (codec === null || decoderConfig === null) return null;
  if (!output.format.getSupportedVideoCodecs().includes(codec)) return null;
  const source = new EncodedVideoPacketSource(codec);
  output.addVideoTrack(source, {
    transformationMatrix: await track.getTransformationMatrix(),
    maximumPacketCount: await packetCount(track),
  });
  const inGroupOrder = groupOrder();
  return {
    packets: new EncodedPacketSink(track).packets(),
    add: (packet) => source.add(inGroupOrder(packet), { decoderConfig }),
    close: () => source.close(),
  };
}

async function copyOfSound(track: InputAudioTrack, output: Output): Promise<TrackCopy | null> {
  const codec = await track.getCodec();
  const decoderConfig = await track.getDecoderConfig();
  if (codec === null || decoderConfig === null) return null;
  if (!output.format.getSupportedAudioCodecs().includes(codec)) return null;
  const source = new EncodedAudioPacketSource(codec);
  output.addAudioTrack(source, { maximumPacketCount: await packetCount(track) });
  return {
    packets: new EncodedPacketSink(track).packets(),
    add: (packet) => source.add(packet, { decoderConfig }),
    close: () => source.close(),
  };
}

/** Feeds the packet that comes first among the tracks, so that the muxer never holds more than a moment of them. */
async function addInTimeOrder(copies: TrackCopy[], shiftS: number): Promise<void> {
  const heads = await Promise.all(copies.map(async (copy) => ({ copy, next: await copy.packets.next() })));
  for (;;) {
    const waiting = heads.filter((head) => !head.next.done);
    const first = waiting.reduce<(typeof heads)[number] | null>(
      (best, head) => (best === null || timeOf(head.next) < timeOf(best.next) ? head : best),
      null,
    );
    if (first === null || first.next.done) return;
    const packet = first.next.value;
    await first.copy.add(shiftS === 0 ? packet : packet.clone({ timestamp: packet.timestamp + shiftS }));
    first.next = await first.copy.packets.next();
    if (first.next.done) first.copy.close();
  }
}

const timeOf = (result: IteratorResult<EncodedPacket, void>): number =>
  result.done ? Number.POSITIVE_INFINITY : result.value.timestamp;

/**
 * Some recorders mark a frame as a key frame although it is shown before frames already stored. The muxer
 * refuses such a key frame, so it is passed on as an ordinary one.
 */
function groupOrder(): (packet: EncodedPacket) => EncodedPacket {
  let latest = Number.NEGATIVE_INFINITY;
  return (packet) => {
    const isLate = packet.type === "key" && packet.timestamp < latest;
    latest = Math.max(latest, packet.timestamp);
    return isLate ? packet.clone({ type: "delta" }) : packet;
  };
}

async function packetCount(track: InputVideoTrack | InputAudioTrack): Promise<number> {
  let count = 0;
  const packets = new EncodedPacketSink(track).packets(undefined, undefined, { metadataOnly: true });
  for await (const _ of packets) count += 1;
  return count;
}
