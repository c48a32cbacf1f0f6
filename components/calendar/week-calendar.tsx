import Link from "next/link";
import { EmptyState } from "@/components/ui/empty-state";
import { joinClasses } from "@/components/ui/join-classes";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import type { Answers } from "@/components/wire/answers";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { type BoardSession, boardSentence, standingWord, whoInShort } from "./board-words";
import { calendarHref } from "./calendar-address";
import { CalendarBar } from "./calendar-bar";
import styles from "./week-calendar.module.css";

type Week = Answers["calendar"]["week"];

/** What a {@link WeekCalendar} takes. */
export interface WeekCalendarProps {
  calendar: Week;
  /** The day that was asked for: the day view goes on from it. */
  day: CalendarDay | null;
  siteId: string | null;
}

/** Who is where in a week: coaches down, days across, with what is booked and the gaps still free. */
export function WeekCalendar({ calendar, day, siteId }: WeekCalendarProps) {
  const { monday, today, days, coaches, sites } = calendar;
  return (
    <>
      <PageHeading
        place={`${dayInWords(monday)} to ${dayInWords(days.at(-1) ?? monday, { withYear: true })}`}
        question="Who is where?"
        actions={
          <LinkButton href="/calendar/find" variant="primary">
            Find a time
          </LinkButton>
        }
      />
      <CalendarBar place={{ view: "week", day: day ?? today, siteId }} today={today} sites={sites} />
      {coaches.length === 0 ? (
        <EmptyState title="Nobody coaches yet">An admin invites coaches under Academy, People.</EmptyState>
      ) : null}
      {coaches.map((coach) => (
        <Section key={coach.id} title={coach.name} count={countInWords(coach.days)}>
          <ol className={styles.days}>
            {coach.days.map((day) => (
              <Day key={day.day} day={day} isToday={day.day === today} siteId={siteId} />
            ))}
          </ol>
        </Section>
      ))}
    </>
  );
}

type CoachDay = Week["coaches"][number]["days"][number];

function countInWords(days: readonly CoachDay[]): string {
  const count = days.reduce((sum, day) => sum + day.sessions.length, 0);
  return count === 1 ? "1 session" : `${count} sessions`;
}

function Day({ day, isToday, siteId }: { day: CoachDay; isToday: boolean; siteId: string | null }) {
  return (
    <li className={joinClasses(styles.day, isToday && styles.today)}>
      <h3 className={styles.head}>
        <Link href={calendarHref({ view: "day", day: day.day as CalendarDay, siteId })}>
          {dayInWords(day.day)}
        </Link>
        {isToday ? <small>today</small> : null}
      </h3>
      <ol className={styles.sessions}>
        {day.sessions.map((session) => (
          <li key={session.id}>
            <SessionLink session={session} />
          </li>
        ))}
      </ol>
      {day.gaps.length > 0 ? (
        <p className={styles.gaps}>free {day.gaps.map((gap) => gap.replace(" to ", "–")).join(", ")}</p>
      ) : null}
      {day.sessions.length === 0 && day.gaps.length === 0 ? <p className={styles.gaps}>nothing</p> : null}
    </li>
  );
}

function SessionLink({ session }: { session: BoardSession }) {
  const word = session.withoutRoom.length > 0 ? "no room by the book" : standingWord(session);
  return (
    <Link
      href={`/calendar/${session.id}`}
      className={styles.session}
      data-state={session.isUnlogged ? "unlogged" : session.state}
      aria-label={boardSentence(session)}
    >
      <span>{session.timeWords.split(" ")[0]}</span>
      <span className={styles.who}>
        {whoInShort(session.names)}
        {word ? <small>{word}</small> : null}
      </span>
    </Link>
  );
}
