import type { CheckpointEvidence } from "@/server/api/evidence/checkpoint-shape";
import { CAMERA_VIEW_WORDS } from "@/server/domain/mechanics/delivery";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import { dayInWords } from "@/server/domain/time/words";
import type { SeriesView } from "./plot-days";

/** What a series holds and from where. @example "Front-knee flexion, open side" */
export function seriesName({ kind, view }: Pick<SeriesView, "kind" | "view">): string {
  const what = kind === "judgement" ? "Judged" : MEASURES[kind].words;
  const where = view === null ? "in person" : CAMERA_VIEW_WORDS[view].toLowerCase();
  return `${what}, ${where}`;
}

/** One day read out. @example "3 Mar 2026: 41°, the middle of 3 deliveries." */
export function dayReadOut({ day, words, deliveries, place }: SeriesView["days"][number]): string {
  const of = deliveries === 1 ? "one delivery" : `the middle of ${deliveries} deliveries`;
  const film = place !== null && !place.isKept ? " Its film is past its day and gone." : "";
  return `${dayInWords(day, { withYear: true })}: ${words}, ${of}.${film}`;
}

/**
 * A correction's life in words.
 * @example "1. “Firm front leg”: given 3 Mar 2026, held 20 May 2026."
 */
export function spanInWords(correction: CheckpointEvidence["corrections"][number], place: number): string {
  const { cue, cameBack, spans, givenOn } = correction;
  const steps = spans
    .filter(({ state, fromDay }, at) => at > 0 || state !== "given" || fromDay !== givenOn)
    .map(({ state, fromDay }) => `${STATE_WORDS[state]} ${dayInWords(fromDay, { withYear: true })}`);
  const came = cameBack ? " It came back." : "";
  const open = spans.at(-1)?.state === "given" || spans.at(-1)?.state === "showing" ? ", still open" : "";
  const all = [`given ${dayInWords(givenOn, { withYear: true })}`, ...steps].join(", ");
  return `${place}. “${cue}”: ${all}${open}.${came}`;
}

const STATE_WORDS = { given: "given again", showing: "showing", held: "held", retired: "retired" } as const;
