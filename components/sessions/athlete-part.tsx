import Link from "next/link";
import { Section } from "@/components/ui/section";
import type { Answers } from "@/components/wire/answers";
import { throwsOnMound } from "@/server/domain/calendar/session-kind";
import { momentInWords } from "@/server/domain/time/words";
import { ArmNow, WaysOut } from "./arm-now";
import { CheckInForm } from "./check-in-form";
import { LoggedLine } from "./logged-line";
import { PlannedCorrections } from "./planned-corrections";
import styles from "./sessions.module.css";

type View = Answers["sessions"]["forStaff"];
type Athlete = View["athletes"][number];

/** What an {@link AthletePart} takes. */
export interface AthletePartProps {
  view: View;
  athlete: Athlete;
}

/** One athlete of a session: the arm now, what was asked, what is planned; once it is logged, what was done. */
export function AthletePart({ view, athlete }: AthletePartProps) {
  const { head } = view;
  const isAhead = head.state === "booked" || head.state === "checked_in";
  return (
    <Section
      title={athlete.name}
      aside={<Link href={`/athletes/${athlete.athleteId}`}>Is it better?</Link>}
      className={styles.athlete ?? ""}
    >
      {isAhead ? <Ahead view={view} athlete={athlete} /> : null}
      {head.state === "no_show" ? <CheckIn view={view} athlete={athlete} /> : null}
      {athlete.log ? (
        <Section title="Logged" level={3} aside={momentInWords(athlete.log.loggedAtMs, head.zone)}>
          <LoggedLine log={athlete.log} />
        </Section>
      ) : null}
    </Section>
  );
}

function Ahead({ view, athlete }: AthletePartProps) {
  const { now, givenName, corrections } = athlete;
  /* The log names the same corrections with the same cues. */
  const mayLog = view.mayRun && view.acts.includes("log");
  return (
    <>
      {now ? (
        <ArmNow now={now} givenName={givenName}>
          {view.acts.includes("move") ? <WaysOut view={view} /> : null}
        </ArmNow>
      ) : null}
      <CheckIn view={view} athlete={athlete} />
      {corrections.length > 0 && !mayLog ? (
        <Section title="To work on" level={3} count={corrections.length}>
          <PlannedCorrections corrections={corrections} />
        </Section>
      ) : null}
    </>
  );
}

function CheckIn({ view, athlete }: AthletePartProps) {
  const { head, acts, mayRun } = view;
  if (!throwsOnMound(head.kind)) return null;
  const mayAsk = mayRun && (acts.includes("check_in") || head.state === "checked_in");
  return (
    <Section title="Check-in" level={3}>
      {athlete.checkIn ? (
        <Asked checkIn={athlete.checkIn} zone={head.zone} />
      ) : mayAsk ? (
        <CheckInForm sessionId={head.id} athlete={athlete} />
      ) : (
        <p className={styles.quiet}>
          Asked by the coach before mound work, from an hour before the start: thrown since, any pain?
        </p>
      )}
    </Section>
  );
}

function Asked({ checkIn, zone }: { checkIn: NonNullable<Athlete["checkIn"]>; zone: string }) {
  const thrown = checkIn.thrownSince ? "throws since then went to the log" : "nothing thrown since";
  const pain = checkIn.pain ? "pain reported: no throwing" : "no pain";
  return (
    <p>
      {momentInWords(checkIn.atMs, zone)}, asked by {checkIn.askedByName}: {thrown}, {pain}.
    </p>
  );
}
