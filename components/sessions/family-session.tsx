import { LinkButton } from "@/components/ui/link-button";
import { Section } from "@/components/ui/section";
import type { Answers } from "@/components/wire/answers";
import { ArmNow } from "./arm-now";
import { EndSession } from "./end-session";
import { LoggedLine } from "./logged-line";
import { PlannedCorrections } from "./planned-corrections";
import { SessionHeading, sessionQuestion } from "./session-heading";
import styles from "./sessions.module.css";

/** What a {@link FamilySession} takes. */
export interface FamilySessionProps {
  view: Answers["sessions"]["forFamily"];
  athlete: { athleteId: string; givenName: string };
}

/** A session as its family sees it: when and where, what the arm has left, the plan, what was done. */
export function FamilySession({ view, athlete }: FamilySessionProps) {
  const { head, others, corrections, log } = view;
  const isOver = head.state === "cancelled" || log !== null;
  return (
    <>
      <SessionHeading
        head={head}
        question={sessionQuestion(head.state, `When does ${athlete.givenName} come in?`)}
      />
      {others > 0 ? (
        <p className={styles.armLine}>
          {others === 1 ? "One other comes too." : `${others} others come too.`}
        </p>
      ) : null}
      {log ? (
        <Section title="Logged">
          <LoggedLine log={log} />
        </Section>
      ) : (
        <Asks view={view} givenName={athlete.givenName} />
      )}
      {corrections.length > 0 && !isOver ? (
        <Section title="To confirm in person" count={corrections.length}>
          <PlannedCorrections corrections={corrections} />
        </Section>
      ) : null}
      <Acts view={view} athleteId={athlete.athleteId} />
    </>
  );
}

function Asks({ view, givenName }: { view: FamilySessionProps["view"]; givenName: string }) {
  const { head, now } = view;
  const isAhead = head.state === "booked" || head.state === "checked_in";
  return isAhead && now ? <ArmNow now={now} givenName={givenName} /> : null;
}

function Acts({ view, athleteId }: { view: FamilySessionProps["view"]; athleteId: string }) {
  const { head, acts, mayChange, others } = view;
  if (!mayChange || !acts.includes("cancel")) return null;
  return (
    <div className={styles.acts}>
      {acts.includes("move") && others === 0 ? (
        <LinkButton href={`/family/${athleteId}/times?move=${head.id}`}>Move it</LinkButton>
      ) : null}
      <EndSession sessionId={head.id} version={head.version} placeOf={others > 0 ? athleteId : null} />
    </div>
  );
}
