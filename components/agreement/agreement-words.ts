import type { PoolView, SetsView } from "@/server/api/agreement/shapes";
import { levelInWords } from "@/server/domain/mechanics/amount-in-words";
import { BLIND_FRAMES } from "@/server/domain/mechanics/blind-draw";
import type { BlindWay } from "@/server/domain/mechanics/blind-pool";
import type { CameraView } from "@/server/domain/mechanics/delivery";
import { type JudgementScore, judgementWord } from "@/server/domain/mechanics/judgement";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import type { SeriesKind } from "@/server/domain/mechanics/observation";

/** What coaches do with a set, as it is written. */
export const WAY_WORDS: Readonly<Record<BlindWay, string>> = { judge: "Judged 0 to 3", measure: "Measured" };

/** The figure that tells agreement, by its full name. */
export function methodInWords(kind: SeriesKind): string {
  return kind === "judgement"
    ? "Weighted kappa of each pair, quadratic weights; Cohen 1968. The interval is of large samples, at 95 %."
    : "ICC(2,1), two-way random, absolute agreement, single measure; Shrout and Fleiss 1979. The interval is at 95 %.";
}

/** What a set of results is called. @example kindInWords("judgement") // "Judgements" */
export function kindInWords(kind: SeriesKind): string {
  return kind === "judgement" ? "Judgements" : MEASURES[kind].words;
}

/**
 * What one coach said of a frame.
 * @example saidInWords("judgement", 2) // "2 mostly"
 * @example saidInWords("front_knee_flexion", null) // "could not be seen"
 */
export function saidInWords(kind: SeriesKind, value: number | null): string {
  if (value === null) return "could not be seen";
  return kind === "judgement"
    ? `${value} ${judgementWord(value as JudgementScore)}`
    : levelInWords(kind, value);
}

/** How far coaches are with a set. @example "2 coaches have begun, 1 is through" */
export function progressInWords({
  begun,
  finished,
}: Pick<SetsView["sets"][number], "begun" | "finished">): string {
  if (begun === 0) return "nobody has begun";
  const begin = begun === 1 ? "1 coach has begun" : `${begun} coaches have begun`;
  const end =
    finished === 0 ? "none is through" : finished === 1 ? "1 is through" : `${finished} are through`;
  return `${begin}, ${end}`;
}

/** Where one coach stands with a set, in a word. @example standingInWords(0, 12) // "not begun" */
export function standingInWords(rated: number, of: number): string {
  if (rated === 0) return "not begun";
  return rated >= of ? "through" : "under way";
}

/** The checkpoints that a set can be drawn of, each with how many frames there are. */
export function choicesOf(
  { checkpoints, counts }: PoolView,
  way: BlindWay,
  view: CameraView | null,
): { id: string; name: string; frames: number }[] {
  return checkpoints.flatMap(({ id, name }) => {
    const count = counts.find((each) => each.checkpointId === id && each.way === way && each.view === view);
    return count ? [{ id, name, frames: count.frames }] : [];
  });
}

/** The views from which there is anything to draw. */
export function viewsIn({ counts }: PoolView, way: BlindWay): Set<CameraView> {
  return new Set(counts.flatMap((each) => (each.way === way ? [each.view] : [])));
}

/**
 * How many frames there are to draw from, and why no set can be drawn of them.
 * @example thereInWords(4, 12) // "4 frames are there to draw from: fewer than the 5 that a set has at least."
 */
export function thereInWords(there: number, asked: number | null): string {
  const words = there === 1 ? "1 frame is there to draw from" : `${there} frames are there to draw from`;
  if (there < BLIND_FRAMES.min)
    return `${words}: fewer than the ${BLIND_FRAMES.min} that a set has at least.`;
  if (asked !== null && asked > there) return `${words}: fewer than the ${asked} asked for.`;
  return `${words}.`;
}

/** Some names in a sentence. @example namesInWords(["Ada", "Ben", "Cleo"]) // "Ada, Ben and Cleo" */
export function namesInWords(names: readonly string[]): string {
  return new Intl.ListFormat("en-GB").format(names);
}
