import Link from "next/link";
import { SESSION_KIND } from "@/server/domain/calendar/session-kind";
import styles from "./agenda.module.css";
import { type BoardSession, standingWord } from "./board-words";

/** Sessions one under the other by their start: the day as a phone shows it. */
export function Agenda({ sessions }: { sessions: readonly BoardSession[] }) {
  const inOrder = [...sessions].sort((a, b) => a.fromHour - b.fromHour);
  return (
    <ol className={styles.agenda}>
      {inOrder.map((session) => (
        <li key={session.id}>
          <Link href={`/calendar/${session.id}`} className={styles.session}>
            <span className={styles.time}>
              {session.timeWords.split(" to ").map((time) => (
                <span key={time}>{time}</span>
              ))}
            </span>
            <span className={styles.what}>
              <b>{session.names.join(", ")}</b>
              <span className={styles.detail}>{detailOf(session)}</span>
              {session.withoutRoom.map((words) => (
                <span key={words} className={styles.without}>
                  {words}
                </span>
              ))}
            </span>
          </Link>
        </li>
      ))}
    </ol>
  );
}

function detailOf(session: BoardSession): string {
  const planned = session.plannedPitches > 0 ? `${session.plannedPitches} pitches` : "";
  const parts = [
    SESSION_KIND[session.kind].label,
    session.laneName,
    session.coachName,
    planned,
    standingWord(session),
  ];
  return parts.filter((part) => part !== "").join(", ");
}
