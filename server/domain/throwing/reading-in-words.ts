import { capitalised } from "../text/capitalised";
import { MOUND_WORK_KINDS, type ThrowReading } from "./throw-entry";

/**
 * Which reading of the books is on: what counts toward a day's number and rest, in one sentence that says what the
 * books themselves count.
 * @example "Bullpens and lessons count like games here, the cautious reading; the books themselves speak of games."
 */
export function readingInWords({ countedKinds }: Pick<ThrowReading, "countedKinds">): string {
  const books = "the books themselves speak of games";
  const counts = MOUND_WORK_KINDS.filter((kind) => countedKinds.includes(kind)).map((kind) => PLURALS[kind]);
  const others = MOUND_WORK_KINDS.filter((kind) => !countedKinds.includes(kind)).map((kind) => PLURALS[kind]);
  if (counts.length === 0)
    return `Games, live at-bats and showcases count here, ${others.join(" and ")} do not.`;
  const counted = `${capitalised(counts.join(" and "))} count like games here`;
  return others.length === 0
    ? `${counted}, the cautious reading; ${books}.`
    : `${counted}, ${others.join(" and ")} do not; ${books}.`;
}

const PLURALS = { bullpen: "bullpens", lesson: "lessons" } as const;
