import type { NoticeKind } from "@/server/domain/notices/notice";
import { MAX_EFFORT } from "@/server/domain/throwing/load-effort";
import { momentInWords } from "@/server/domain/time/words";
import { type CountedPitches, countsInWords } from "./counted-pitches";
import { SESSION_KIND, type SessionKind } from "./session-kind";
import type { Attendance } from "./session-state";

/** What a notice about a session names. */
export interface ToldSession {
  kind: SessionKind;
  startsAtMs: number;
  zone: string;
  siteName: string;
  laneName: string;
  coachName: string;
}

/** One line of a session: "Bullpen, Tue 1 Dec 17:00 (America/New_York), North site, Lane 2, with Cole Rivers". */
export function sessionInWords(session: ToldSession): string {
  const { kind, startsAtMs, zone, siteName, laneName, coachName } = session;
  const when = `${momentInWords(startsAtMs, zone)} (${zone})`;
  return `${SESSION_KIND[kind].label}, ${when}, ${siteName}, ${laneName}, with ${coachName}`;
}

/**
 * What is told of one athlete's log, a line each; the last ones may be blank.
 * @param log.held how many corrections were confirmed in person
 * @example ["60 min, 25 pitches thrown, effort 6 of 10.", "1 correction holds now.", ""]
 */
export function sessionLogInWords(
  log: CountedPitches & {
    attendance: Attendance;
    minutes: number;
    pitches: number;
    effort: number | null;
    held: number;
    note: string;
  },
): string[] {
  if (log.attendance === "no_show") return ["Did not come."];
  const confirmed = log.held === 1 ? "1 correction holds now." : `${log.held} corrections hold now.`;
  const effort = log.effort === null ? [] : [`effort ${log.effort} of ${MAX_EFFORT}`];
  return [
    `${[`${log.minutes} min`, `${log.pitches} pitches thrown`, ...countsInWords(log), ...effort].join(", ")}.`,
    log.held > 0 ? confirmed : "",
    log.note.trim(),
  ];
}

type SessionNoticeKind = Extract<NoticeKind, `session_${string}`>;

const HEADLINES: Record<SessionNoticeKind, string> = {
  session_booked: "booked",
  session_moved: "moved to",
  session_cancelled: "cancelled",
  session_logged: "logged",
  session_without_room: "no room by the book",
};

/**
 * A notice about one athlete's session: what happened in the subject, the whole session and what else there is to say
 * in the body.
 * @param more further lines, blank ones left out
 * @example subject "Kit: booked Tue 1 Dec 17:00"
 */
export function sessionNotice(
  kind: SessionNoticeKind,
  givenName: string,
  session: ToldSession,
  more: readonly string[],
): { kind: NoticeKind; subject: string; body: string } {
  const moment = momentInWords(session.startsAtMs, session.zone);
  const lines = [`${sessionInWords(session)}.`, ...more].filter((line) => line.trim() !== "");
  return { kind, subject: `${givenName}: ${HEADLINES[kind]} ${moment}`, body: lines.join("\n") };
}
