import Link from "next/link";
import { Section } from "@/components/ui/section";
import type { Answers } from "@/components/wire/answers";
import { SESSION_KIND } from "@/server/domain/calendar/session-kind";
import { momentInWords } from "@/server/domain/time/words";
import styles from "./sessions.module.css";

/** What a {@link ComingSessions} takes. */
export interface ComingSessionsProps {
  sessions: Answers["sessions"]["coming"]["sessions"];
  /** Where a session is looked at, up to its id. */
  sessionHref: string;
}

/** The sessions an athlete comes in for, earliest first, each with what lost its room; nothing when there is none. */
export function ComingSessions({ sessions, sessionHref }: ComingSessionsProps) {
  if (sessions.length === 0) return null;
  return (
    <Section title="Booked" count={sessions.length}>
      <ul className={styles.coming}>
        {sessions.map(({ head, now }) => (
          <li key={head.id}>
            <Link href={`${sessionHref}/${head.id}`} className={styles.comingLink}>
              <b>{momentInWords(head.startsAtMs, head.zone)}</b>
              <span className={styles.quiet}>
                {SESSION_KIND[head.kind].label}, {head.siteName}, {head.laneName}, with {head.coachName}
              </span>
              {now && !now.hasRoom ? <strong>{now.words}</strong> : null}
            </Link>
          </li>
        ))}
      </ul>
    </Section>
  );
}
