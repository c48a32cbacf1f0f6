import Link from "next/link";
import { EmptyState } from "@/components/ui/empty-state";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import { Legend } from "@/components/ui/state-mark";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords, momentInWords } from "@/server/domain/time/words";
import { ArmList, type ComingArm } from "./arm-list";
import styles from "./day.module.css";
import { DayLine } from "./day-line";
import { hoursOver } from "./day-line-layout";
import { type DaySession, whoComes } from "./day-session";
import { DemoDrawing } from "./demo-drawing";
import { Grouped } from "./grouped";
import { OwedList, type OwedReview } from "./owed-list";
import { SessionList } from "./session-list";

/** What a {@link Day} takes: what `today.staff` answers. */
export interface DayProps {
  nowMs: number;
  today: CalendarDay;
  zone: string;
  siteNames: readonly string[];
  myPersonId: string;
  open: { startMs: number; endMs: number } | null;
  sessions: readonly DaySession[];
  next: DaySession | null;
  unlogged: readonly DaySession[];
  owed: readonly OwedReview[];
  arms: readonly ComingArm[];
  drawing: { ready: number; drawing: number };
}

/** The first screen of staff: the day on one line, under it what is owed and the arms that come. */
export function Day(props: DayProps) {
  const { today, siteNames, sessions, owed, arms, unlogged, drawing, nowMs } = props;
  const [first] = owed;
  return (
    <>
      <PageHeading
        place={[dayInWords(today, { long: true }), ...siteNames].join(", ")}
        question="What do I owe, and who is coming?"
        actions={
          <>
            {first ? (
              <LinkButton href={`/reviews/${first.roundId}`} variant="primary">
                Open the next review
              </LinkButton>
            ) : null}
            <LinkButton href="/calendar/find">Find a time</LinkButton>
          </>
        }
      />
      {drawing.drawing > 0 ? (
        <div className={styles.drawing}>
          <DemoDrawing {...drawing} />
        </div>
      ) : null}
      {sessions.length > 0 ? <Sessions {...props} /> : <NobodyComes {...props} />}
      <div className={styles.halves}>
        <Section title="Owed" count={owed.length} aside={<Link href="/reviews">The whole queue</Link>}>
          <OwedList owed={owed} nowMs={nowMs} />
          {unlogged.length > 0 ? <Unlogged sessions={unlogged} /> : null}
        </Section>
        <Section title="Arms" count={arms.length} aside="What is planned for today left out">
          {arms.length > 0 ? (
            <>
              <Grouped rows={arms} groupOf={(arm) => (arm.isMine ? "Yours" : "With other coaches")}>
                {(rows) => <ArmList arms={rows} />}
              </Grouped>
              <div className={styles.legend}>
                <Legend />
              </div>
            </>
          ) : (
            <EmptyState title="No arm comes in today">
              How every arm stands is under <Link href="/athletes">Athletes</Link>.
            </EmptyState>
          )}
        </Section>
      </div>
    </>
  );
}

function Sessions({ sessions, open, zone, nowMs, myPersonId }: DayProps) {
  const span = hoursOver(open, sessions);
  const rank = (each: DaySession) => (each.coachPersonId === myPersonId ? 0 : 1);
  return (
    <section aria-label="The day" className={styles.day}>
      {span ? (
        <div className={styles.line}>
          <DayLine sessions={sessions} span={span} zone={zone} nowMs={nowMs} myPersonId={myPersonId} />
        </div>
      ) : null}
      <div className={styles.list}>
        <Grouped
          rows={sessions.toSorted((a, b) => rank(a) - rank(b))}
          groupOf={(each) => (each.coachPersonId === myPersonId ? "Yours" : "With other coaches")}
        >
          {(rows) => <SessionList sessions={rows} myPersonId={myPersonId} />}
        </Grouped>
      </div>
    </section>
  );
}

function NobodyComes({ next, open }: DayProps) {
  return (
    <EmptyState title={open ? "Nobody comes in today" : "Closed today"}>
      {next ? (
        <>
          Next:{" "}
          <Link href={`/calendar/${next.id}`}>
            {momentInWords(next.startsAtMs, next.zone)}, {whoComes(next)}
          </Link>
        </>
      ) : (
        <>
          Nothing is booked ahead. <Link href="/calendar/find">Find a time</Link>
        </>
      )}
    </EmptyState>
  );
}

/** How many sessions that nobody logged are named; the calendar shows them all. */
const UNLOGGED_SHOWN = 5;

function Unlogged({ sessions }: { sessions: readonly DaySession[] }) {
  return (
    <div className={styles.unlogged}>
      <h3>
        Not logged yet <span className={styles.count}>{sessions.length}</span>
      </h3>
      <ul>
        {sessions.slice(-UNLOGGED_SHOWN).map((session) => (
          <li key={session.id}>
            <Link href={`/calendar/${session.id}`}>
              {momentInWords(session.startsAtMs, session.zone)}, {whoComes(session)}
            </Link>
            <span className={styles.count}> {session.coachName}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}
