import Link from "next/link";
import { SESSION_KIND } from "@/server/domain/calendar/session-kind";
import { timeInWords } from "@/server/domain/time/words";
import { type DaySession, pitchesPlanned, SESSION_STATE_WORDS, whoComes } from "./day-session";
import styles from "./session-list.module.css";

/** The day's sessions one under the other, for a phone; one's own stand out, the others name their coach. */
export function SessionList({
  sessions,
  myPersonId,
}: {
  sessions: readonly DaySession[];
  myPersonId: string;
}) {
  return (
    <ul className={styles.list}>
      {sessions.map((session) => (
        <li key={session.id}>
          <Link href={`/calendar/${session.id}`} className={styles.session}>
            <span className={styles.time}>{timeInWords(session.startsAtMs, session.zone)}</span>
            <span className={session.coachPersonId === myPersonId ? styles.who : undefined}>
              {whoComes(session)}
              <span className={styles.detail}>{detailOf(session, myPersonId)}</span>
            </span>
            <span className={styles.pitches}>{pitchesPlanned(session)}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}

function detailOf(session: DaySession, myPersonId: string): string {
  const coach = session.coachPersonId === myPersonId ? "" : `with ${session.coachName}`;
  const parts = [
    SESSION_KIND[session.kind].label,
    session.laneName,
    coach,
    SESSION_STATE_WORDS[session.state],
  ];
  return parts.filter(Boolean).join(", ");
}
