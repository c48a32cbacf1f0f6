import type { DraftMark, DraftMeasure, ReviewDraft } from "@/server/domain/reviews/draft";

/* What is measured and drawn on the picture, as single changes that can be undone one by one. */

/** What a draft holds of the picture. */
export type OnPicture = Pick<ReviewDraft, "measures" | "marks">;

interface Change<Row> {
  id: string;
  /** Which part of the row the hand is at; one hand at one part makes one step, however often it moves. */
  act: string;
  /** Null when it was not there. */
  before: Row | null;
  /** Null when it is taken away. */
  after: Row | null;
}

/** One change of one measure or mark. */
export type PictureChange =
  | ({ of: "measures" } & Change<DraftMeasure>)
  | ({ of: "marks" } & Change<DraftMark>);

/** Makes a change; the row is found by its id, so that what else was written meanwhile stays. */
export function withChange<Document extends OnPicture>(document: Document, change: PictureChange): Document {
  return change.of === "measures"
    ? { ...document, measures: rowsWith(document.measures, change) }
    : { ...document, marks: rowsWith(document.marks, change) };
}

function rowsWith<Row extends { id: string }>(rows: readonly Row[], { id, after }: Change<Row>): Row[] {
  if (after === null) return rows.filter((row) => row.id !== id);
  const isThere = rows.some((row) => row.id === id);
  return isThere ? rows.map((row) => (row.id === id ? after : row)) : [...rows, after];
}

/** The change that takes another back. */
export function inverse(change: PictureChange): PictureChange {
  return change.of === "measures"
    ? { ...change, before: change.after, after: change.before }
    : { ...change, before: change.after, after: change.before };
}

/** What was done and can be undone, and what was undone and can be done again; the latest last in both. */
export interface PictureHistory {
  done: readonly PictureChange[];
  undone: readonly PictureChange[];
}

export const NOTHING_DONE: PictureHistory = { done: [], undone: [] };

/** So many steps can be undone. Common practice, no source. */
const MOST_STEPS = 200;

/** Adds a change to what was done; a further move by the same hand at the same part is no step of its own. */
export function afterChange({ done }: PictureHistory, change: PictureChange): PictureHistory {
  const last = done.at(-1);
  const isSameHand =
    last !== undefined &&
    last.of === change.of &&
    last.id === change.id &&
    last.act === change.act &&
    last.before !== null &&
    change.after !== null;
  const step = isSameHand ? ({ ...change, before: last.before } as PictureChange) : change;
  const earlier = isSameHand ? done.slice(0, -1) : done;
  return { done: [...earlier, step].slice(-MOST_STEPS), undone: [] };
}

/** One step back. @returns the change to make, null when there is nothing to undo */
export function stepBack({ done, undone }: PictureHistory): {
  change: PictureChange | null;
  history: PictureHistory;
} {
  const last = done.at(-1);
  if (!last) return { change: null, history: { done, undone } };
  return { change: inverse(last), history: { done: done.slice(0, -1), undone: [...undone, last] } };
}

/** One undone step again. @returns the change to make, null when nothing was undone */
export function stepOn({ done, undone }: PictureHistory): {
  change: PictureChange | null;
  history: PictureHistory;
} {
  const last = undone.at(-1);
  if (!last) return { change: null, history: { done, undone } };
  return { change: last, history: { done: [...done, last], undone: undone.slice(0, -1) } };
}

/** A mark that shows up to the frame in sight, or from it on when that comes first; its own frame alone is no span. */
export function spanTo(mark: DraftMark, frame: number): DraftMark {
  if (frame < mark.frame) return { ...mark, frame, untilFrame: mark.untilFrame ?? mark.frame };
  return { ...mark, untilFrame: frame === mark.frame ? null : frame };
}

/**
 * The points of a straight-standing frame that a measure on this clip has placed already, as far as they are the first
 * ones another kind asks for: they need not be placed twice.
 */
export function standingPoints(
  document: Pick<OnPicture, "measures">,
  clipId: string,
  asked: readonly { name: string; on: string }[],
  namesOf: (kind: DraftMeasure["kind"]) => readonly { name: string; on: string }[],
): DraftMeasure["points"] {
  const found = document.measures
    .filter((measure) => measure.clipId === clipId)
    .map((measure) => {
      const names = namesOf(measure.kind);
      const points = asked.map((ask) =>
        ask.on === "standing"
          ? measure.points[names.findIndex((each) => each.on === "standing" && each.name === ask.name)]
          : undefined,
      );
      const first = points.indexOf(undefined);
      return points.slice(0, first === -1 ? points.length : first).filter((point) => point !== undefined);
    });
  return found.reduce((most, points) => (points.length > most.length ? points : most), []);
}
