import { SESSION_KIND, type SessionKind } from "@/server/domain/calendar/session-kind";
import type { SessionState } from "@/server/domain/calendar/session-state";
import { timeInWords } from "@/server/domain/time/words";

/** A session as the day shows it. */
export interface DaySession {
  id: string;
  kind: SessionKind;
  state: SessionState;
  startsAtMs: number;
  endsAtMs: number;
  zone: string;
  siteName: string;
  laneName: string;
  coachPersonId: string;
  coachName: string;
  places: number;
  athletes: readonly { athleteId: string; name: string; shortName: string; plannedPitches: number }[];
}

/** A state that is not the plain one, in a word; a booked session says nothing. */
export const SESSION_STATE_WORDS: Record<SessionState, string> = {
  booked: "",
  checked_in: "checked in",
  logged: "logged",
  cancelled: "cancelled",
  no_show: "no-show",
};

/** Who comes, as short as it can stand: names of one or two, else how many of how many places. */
export function whoComes(session: DaySession): string {
  if (session.athletes.length > 2) return `Group ${session.athletes.length}/${session.places}`;
  return session.athletes.map((athlete) => athlete.shortName).join(", ");
}

/** The pitches planned, as short as they can stand; "dry" where none are. */
export function pitchesPlanned(session: DaySession): string {
  const most = Math.max(0, ...session.athletes.map((athlete) => athlete.plannedPitches));
  return most === 0 ? "dry" : `${most}p`;
}

/** A session in one line: "17:00 to 17:30, Bullpen, Theo Hallowell, 30 pitches, Mound 1 at Mill Street, with Tamar Whitlock". */
export function daySessionInWords(session: DaySession): string {
  const { startsAtMs, endsAtMs, zone, siteName, laneName, coachName, kind, state } = session;
  const who = session.athletes.map(({ name, plannedPitches }) =>
    plannedPitches > 0 ? `${name}, ${plannedPitches} pitches` : name,
  );
  const parts = [
    `${timeInWords(startsAtMs, zone)} to ${timeInWords(endsAtMs, zone)}`,
    SESSION_KIND[kind].label,
    ...who,
    `${laneName} at ${siteName}`,
    `with ${coachName}`,
    SESSION_STATE_WORDS[state],
  ];
  return parts.filter(Boolean).join(", ");
}
