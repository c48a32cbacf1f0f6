import type { ToldPain } from "@/components/sessions/pain-fields";
import type { ThrowKind } from "@/server/domain/throwing/throw-entry";
import { throwsInWords } from "@/server/domain/throwing/throw-words";
import { hasGameDetails } from "@/server/domain/throwing/validate-game";
import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { type GameDraft, gameOf, inningsProblem, NO_DRAFT } from "./game-draft";
import type { ThrowsToLog } from "./kept-throws";

/** Throws while they are being told; null where something is missing yet. */
export interface ThrowDraft {
  kind: ThrowKind;
  thrownOn: CalendarDay | null;
  pitches: number | null;
  /** Of a game: what it says, and whether anything hurt. Left aside for other kinds. */
  game: GameDraft;
  hurts: boolean | null;
  pain: ToldPain;
}

/** Where telling begins: today, nothing said. */
export function firstThrowDraft(today: CalendarDay, kind: ThrowKind): ThrowDraft {
  const pain = { kind: "pain", feltOn: today, note: "" } as const;
  return { kind, thrownOn: today, pitches: null, game: NO_DRAFT, hurts: null, pain };
}

/** The throws as the log takes them, or null while something is missing or cannot be read. */
export function throwsOf(draft: ThrowDraft, athleteId: string): ThrowsToLog | null {
  const { kind, thrownOn, pitches, game } = draft;
  if (thrownOn === null || pitches === null) return null;
  if (hasGameDetails(kind) && inningsProblem(game.innings)) return null;
  return { athleteId, thrownOn, kind, pitches, game: gameOf(kind, game), pain: painOf(draft) };
}

/** Pain told with the throws, or null; asked of games only. */
export function painOf({ kind, hurts, pain }: ThrowDraft): ToldPain | null {
  return hasGameDetails(kind) && hurts === true ? pain : null;
}

/**
 * What the draft would write, for the button and for saying that it was done.
 * @example whatInWords({ ...draft, kind: "bullpen", pitches: 30 }, today) // "30 pitches, bullpen, today"
 */
export function whatInWords(draft: ThrowDraft, today: CalendarDay): string | null {
  const { kind, thrownOn, pitches } = draft;
  if (thrownOn === null || pitches === null) return null;
  return `${throwsInWords(kind, pitches)}, ${whenInWords(thrownOn, today)}`;
}

function whenInWords(day: CalendarDay, today: CalendarDay): string {
  if (day === today) return "today";
  return day === addDays(today, -1) ? "yesterday" : dayInWords(day);
}
