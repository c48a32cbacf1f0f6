import type { Checkpoint } from "./checkpoint";
import { canBeJudgedFrom, inDeliveryOrder } from "./checkpoint";
import type { CameraView, DeliveryEvent, Phase } from "./delivery";

/** A checkpoint as it is looked for. */
export type FoundBy = Pick<Checkpoint, "id" | "name" | "phase" | "event" | "views">;

/** What is on the picture while a checkpoint is looked for. */
export interface PictureNow {
  /** Null when the camera's place is not known: then everything can be seen. */
  view: CameraView | null;
  /** The part of the delivery that is open, or null. */
  phase: Phase | null;
  /** The moments that are marked on the very frame in sight. */
  events: readonly DeliveryEvent[];
}

/** Words that need not be typed, as "the" in "Balanced at the top". */
const SMALL_WORDS = new Set(
  "a an and as at before by comes down for from in into is of off on onto over the to up with".split(" "),
);

/** Ways in which letters fit a name, the closest first. */
const FITS = ["from_first", "in_a_row", "with_gaps"] as const;
type Fit = (typeof FITS)[number];

/**
 * The checkpoints that a few typed letters stand for, the likeliest first: initials or starts of words in their order
 * ("fk", "frkn" and "knee f" all find "Front knee firms"); small words may be left out. Those that cannot be seen from
 * the view come last; then the closer fit, then what is judged on the frame in sight, then the open phase, then the
 * delivery's order. Nothing typed finds all.
 * @example findCheckpoints("hl", library, now) // "Hips lead" first
 */
export function findCheckpoints<Row extends FoundBy>(
  typed: string,
  checkpoints: readonly Row[],
  now: PictureNow,
): Row[] {
  const letters = lettersOf(typed).join("");
  return checkpoints
    .flatMap((row) => {
      const fit = fitOf(letters, row.name);
      return fit === null ? [] : [{ row, rank: rankOf(row, fit, now) }];
    })
    .sort((a, b) => compared(a.rank, b.rank) || inDeliveryOrder(a.row, b.row))
    .map(({ row }) => row);
}

/** Whether a checkpoint can be seen on a clip of this view; an unknown view shows everything. */
export function isInSight(checkpoint: Pick<Checkpoint, "views">, view: CameraView | null): boolean {
  return view === null || canBeJudgedFrom(checkpoint, view);
}

function rankOf(row: FoundBy, fit: Fit, { view, phase, events }: PictureNow): number[] {
  return [
    isInSight(row, view) ? 0 : 1,
    FITS.indexOf(fit),
    events.includes(row.event) ? 0 : 1,
    row.phase === phase ? 0 : 1,
  ];
}

function compared(a: readonly number[], b: readonly number[]): number {
  const place = a.findIndex((value, index) => value !== b[index]);
  return place === -1 ? 0 : (a[place] ?? 0) - (b[place] ?? 0);
}

function fitOf(letters: string, name: string): Fit | null {
  const words = lettersOf(name);
  const telling = words.filter((word) => !SMALL_WORDS.has(word));
  const rows = [words, telling];
  if (rows.some((row) => areStarts(letters, row))) return "from_first";
  if (rows.some((row) => row.some((_word, from) => areStarts(letters, row.slice(from))))) return "in_a_row";
  return areStarts(letters, words, { leavingOut: true }) ? "with_gaps" : null;
}

/** Whether the letters are starts of these words from the first one on, or in their order with some left out. */
function areStarts(letters: string, words: readonly string[], { leavingOut = false } = {}): boolean {
  let taken = new Set([0]);
  for (const word of words) {
    if (taken.has(letters.length)) return true;
    const further = [...taken].flatMap((from) => stopsIn(letters, from, word));
    taken = new Set(leavingOut ? [...taken, ...further] : further);
  }
  return taken.has(letters.length);
}

/** Where one may be in the letters after taking the start of a word from a place on. */
function stopsIn(letters: string, from: number, word: string): number[] {
  const rest = letters.slice(from);
  const differs = [...rest].findIndex((letter, index) => letter !== word[index]);
  const shared = differs === -1 ? rest.length : differs;
  return Array.from({ length: shared }, (_, index) => from + index + 1);
}

/** The words of a text in small letters without accents; hyphens part words. */
function lettersOf(text: string): string[] {
  const plain = text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  return plain.match(/[\p{L}\p{N}]+/gu) ?? [];
}
