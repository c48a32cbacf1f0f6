import type { ClipView } from "@/server/api/reviews/shapes";
import { PITCH_TYPE_WORDS } from "@/server/domain/clips/clip";
import { CAMERA_VIEW_WORDS } from "@/server/domain/mechanics/delivery";
import { dayInWords } from "@/server/domain/time/words";

/** A clip by its view, told from others of that view by its day or its number. @example "Open side, Fri 6 Nov" */
export function clipName(clip: ClipView, clips: readonly ClipView[] = []): string {
  const name = clip.view === null ? "Clip" : CAMERA_VIEW_WORDS[clip.view];
  const alike = clips.filter((each) => each.view === clip.view);
  if (alike.length < 2) return name;
  const isOfItsDay = alike.filter((each) => each.filmedOn === clip.filmedOn).length === 1;
  if (isOfItsDay && clip.filmedOn !== null) return `${name}, ${dayInWords(clip.filmedOn)}`;
  return `${name} ${alike.findIndex((each) => each.id === clip.id) + 1}`;
}

/** What the family said of a clip, apart from its note. @example ["filmed Wed 25 Nov", "fastball", "6 pitches"] */
export function clipFacts(clip: ClipView): string[] {
  const { filmedOn, pitchType, pitchesThrown } = clip;
  return [
    ...(filmedOn === null ? [] : [`filmed ${dayInWords(filmedOn)}`]),
    ...(pitchType === null ? [] : [PITCH_TYPE_WORDS[pitchType].toLowerCase()]),
    ...(pitchesThrown === null ? [] : [pitchesThrown === 1 ? "1 pitch" : `${pitchesThrown} pitches`]),
  ];
}
