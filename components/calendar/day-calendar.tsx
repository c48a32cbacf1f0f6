import { EmptyState } from "@/components/ui/empty-state";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import type { Answers } from "@/components/wire/answers";
import { dayInWords } from "@/server/domain/time/words";
import { Agenda } from "./agenda";
import styles from "./calendar.module.css";
import { CalendarBar } from "./calendar-bar";
import { LaneBoard } from "./lane-board";

type Day = Answers["calendar"]["day"];

/** What a {@link DayCalendar} takes. */
export interface DayCalendarProps {
  calendar: Day;
  siteId: string | null;
}

/** Who is where on a day: a board for each site, and the same as a list on a phone. */
export function DayCalendar({ calendar, siteId }: DayCalendarProps) {
  const { day, today, sites, boards } = calendar;
  const word = day === today ? "Today, " : "";
  return (
    <>
      <PageHeading
        place={`${word}${dayInWords(day, { long: true, withYear: true })}`}
        question="Who is where?"
        actions={
          <LinkButton href="/calendar/find" variant="primary">
            Find a time
          </LinkButton>
        }
      />
      <CalendarBar place={{ view: "day", day, siteId }} today={today} sites={sites} />
      {boards.length === 0 ? (
        <EmptyState title="There is no site yet">
          An admin adds sites, lanes and hours under Academy.
        </EmptyState>
      ) : null}
      {boards.map((board) => (
        <SiteDay key={board.siteId} board={board} />
      ))}
    </>
  );
}

function SiteDay({ board }: { board: Day["boards"][number] }) {
  const sessions = board.lanes.flatMap((lane) => lane.sessions);
  const count = sessions.length === 1 ? "1 session" : `${sessions.length} sessions`;
  const isEmpty = sessions.length === 0 && board.openWords === "closed";
  return (
    <Section title={board.siteName} count={count} aside={`${board.openWords}, ${board.zone}`}>
      {board.lanes.length === 0 || isEmpty ? (
        <EmptyState title={isEmpty ? "Closed on this day" : "No lane here yet"}>
          {isEmpty ? "Nothing is booked." : "An admin adds lanes under Academy."}
        </EmptyState>
      ) : (
        <>
          <LaneBoard board={board} />
          <div className={styles.onlyPhone}>
            {sessions.length > 0 ? <Agenda sessions={sessions} /> : <p>Nothing is booked.</p>}
          </div>
        </>
      )}
    </Section>
  );
}
