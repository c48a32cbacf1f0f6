import type { MarkKind } from "@/components/ui/state-mark";
import { type BoardCell, freeAfter } from "@/server/domain/throwing/board-cell";
import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";

/** The days of a board and the names they go by. */
export interface BoardDays {
  days: readonly CalendarDay[];
  /** "Sat 28 Nov" for each of them. */
  words: readonly string[];
  /** The place of today among them. */
  today: number;
}

/** What a cell draws: one shape with its short word, and a second line where more is known. */
export interface CellFace {
  kind: MarkKind;
  count?: number;
  word: string;
  more: string;
}

/**
 * The days of a board from its first one.
 * @example boardDays("2026-11-11", 29, "2026-11-25").today // 14
 */
export function boardDays(fromDay: CalendarDay, count: number, today: CalendarDay): BoardDays {
  const days = Array.from({ length: count }, (_, index) => addDays(fromDay, index));
  return { days, words: days.map((day) => dayInWords(day)), today: days.indexOf(today) };
}

/**
 * The face of a cell, what matters first: pain, what was thrown, an outing that is planned, rest, the book's number.
 * The second line says what the shape leaves out. What the book left on a day that is over is not said beside throws.
 */
export function cellFace(cell: BoardCell, isPast: boolean): CellFace {
  const { limit, thrown, outing, booked } = cell;
  if (limit === "pain") return { kind: "pain", word: "pain", more: thrown > 0 ? `${thrown} thrown` : "" };
  if (thrown > 0) {
    return { kind: "thrown", count: thrown, word: "thrown", more: isPast ? "" : limitWord(cell) };
  }
  if (outing > 0) return { kind: "outing", word: "outing", more: limitWord(cell) };
  const more = booked > 0 ? `${booked} booked` : "";
  if (limit === "resting") return { kind: "resting", word: "resting", more };
  if (limit === "no_published_limit") return { kind: "allowed", word: "no limit in the book", more };
  if (limit === "overridden") return { kind: "allowed", word: "overridden", more };
  if (limit === "outs") return { kind: "allowed", count: cell.outs, word: "outs at most", more };
  return { kind: "allowed", count: limit, word: "at most", more };
}

function limitWord({ limit, outs }: BoardCell): string {
  if (typeof limit === "number") return `at most ${limit}`;
  if (limit === "outs") return `${outs} outs`;
  return limit === "resting" || limit === "overridden" ? limit : "";
}

/**
 * A cell in words, for those who hear the board and for the line under it: what is on the day, then what the book
 * leaves. A number is never worded as a permission.
 * @example "51 thrown, at most 34 more by the book"
 */
export function cellInWords(cells: readonly BoardCell[], at: number, { words, today }: BoardDays): string {
  const cell = cells[at];
  if (!cell) return "";
  const onTheDay = [
    cell.thrown > 0 ? `${cell.thrown} thrown` : "",
    cell.outing > 0 ? `outing planned, ${cell.outing} pitches` : "",
    cell.booked > 0 ? `${cell.booked} pitches booked` : "",
  ].filter((part) => part !== "");
  if (at < today && cell.thrown > 0 && cell.limit !== "pain") return onTheDay.join(", ");
  const silence = at < today && onTheDay.length === 0 ? ["no throws reported"] : [];
  const free = freeAfter(cells, at);
  const until = free === null ? null : (words[free] ?? null);
  return [...silence, ...onTheDay, limitInWords(cell, until, onTheDay.length > 0)].join(", ");
}

/**
 * What the book leaves, in the words of every other screen.
 * @param until the first free day in words, null where the board does not reach it
 * @param isBeside whether something is on the day already, so that the number comes on top of it
 */
function limitInWords({ limit, outs }: BoardCell, until: string | null, isBeside: boolean): string {
  const more = isBeside ? " more" : "";
  switch (limit) {
    case "pain":
      return "no throwing: pain or unusual fatigue reported";
    case "resting":
      return until === null ? "resting" : `resting until ${until}`;
    case "no_published_limit":
      return "no published limit";
    case "overridden":
      return "an admin's override, not by the book";
    case "outs":
      return `at most ${outs}${more} ${outs === 1 ? "out" : "outs"} by the book`;
    case 0:
      return `none${more} by the book`;
    default:
      return `at most ${limit}${more} by the book`;
  }
}
