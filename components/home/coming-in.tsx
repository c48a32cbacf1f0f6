import Link from "next/link";
import { SESSION_KIND, type SessionKind } from "@/server/domain/calendar/session-kind";
import { addDays, type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";
import { momentInWords, timeInWords } from "@/server/domain/time/words";
import styles from "./family-home.module.css";

/** A session that is coming, for one athlete. */
export interface ComingSession {
  id: string;
  kind: SessionKind;
  startsAtMs: number;
  zone: string;
  siteName: string;
  laneName: string;
  coachName: string;
  plannedPitches: number;
}

/** What a {@link ComingIn} takes. `zone` is the athlete's home zone: another one is named. */
export interface ComingInProps {
  home: string;
  sessions: readonly ComingSession[];
  today: CalendarDay;
  zone: string;
}

/** The next sessions, the very next one largest. */
export function ComingIn({ home, sessions, today, zone }: ComingInProps) {
  return (
    <ul className={styles.sessions}>
      {sessions.slice(0, 4).map((session) => (
        <li key={session.id}>
          <Link href={`${home}/sessions/${session.id}`} className={styles.session}>
            <span className={styles.when}>
              {whenInWords(session, today)}
              {session.zone === zone ? "" : ` (${session.zone})`}
            </span>
            <span className={styles.where}>
              {SESSION_KIND[session.kind].label}, {session.siteName}, {session.laneName}, with{" "}
              {session.coachName};{" "}
              {session.plannedPitches > 0 ? `${session.plannedPitches} pitches planned` : "no mound throws"}
            </span>
          </Link>
        </li>
      ))}
    </ul>
  );
}

function whenInWords({ startsAtMs, zone }: ComingSession, today: CalendarDay): string {
  const day = dayOf(startsAtMs, zone);
  if (day === today) return `Today ${timeInWords(startsAtMs, zone)}`;
  if (day === addDays(today, 1)) return `Tomorrow ${timeInWords(startsAtMs, zone)}`;
  return momentInWords(startsAtMs, zone);
}
