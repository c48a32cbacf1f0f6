import { Section } from "@/components/ui/section";
import type { Answers } from "@/components/wire/answers";
import { AthletePart } from "./athlete-part";
import { LogForm } from "./log-form";
import { SessionActs } from "./session-acts";
import { SessionHeading, sessionQuestion } from "./session-heading";

/** A session as staff run it: who comes, what their arms have left, the check-in, the plan, the log. */
export function StaffSession({ view }: { view: Answers["sessions"]["forStaff"] }) {
  const { head, athletes, acts, mayRun } = view;
  return (
    <>
      <SessionHeading
        head={head}
        question={sessionQuestion(head.state, "Who comes, and what do we work on?")}
        actions={<SessionActs view={view} />}
      />
      {athletes.map((athlete) => (
        <AthletePart key={athlete.athleteId} view={view} athlete={athlete} />
      ))}
      {acts.includes("log") ? (
        <Section title="What was done?" id="log">
          {mayRun ? (
            <LogForm key={head.version} view={view} />
          ) : (
            <p>A coach checks in and logs the session.</p>
          )}
        </Section>
      ) : null}
    </>
  );
}
