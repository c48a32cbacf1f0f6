import type { PainAnswer } from "@/components/throwing/arm-answer";
import { ArmToday } from "@/components/throwing/arm-today";
import { PainBanner } from "@/components/throwing/pain-banner";
import { EmptyState } from "@/components/ui/empty-state";
import { LinkButton } from "@/components/ui/link-button";
import { Notice } from "@/components/ui/notice";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import type { ArmMark } from "@/server/domain/throwing/arm-marks";
import { dayInWords } from "@/server/domain/time/words";
import { ComingIn, type ComingSession } from "./coming-in";
import styles from "./family-home.module.css";
import { WorkingOn, type WorkingOnProps } from "./working-on";

/** What a {@link FamilyHome} takes: what `today.family` answers. */
export interface FamilyHomeProps extends Omit<WorkingOnProps, "athleteId" | "zone" | "maySend"> {
  athlete: { athleteId: string; givenName: string; zone: string; hasLeft: boolean };
  hasConsent: boolean;
  /** Whether the one who looks may decide on consent. */
  mayDecide: boolean;
  sessions: readonly ComingSession[];
  pain: PainAnswer;
  arm: { words: string; why: readonly string[]; marks: readonly ArmMark[] };
}

/** A family's first screen: three answers, and before them what must be seen first. */
export function FamilyHome(props: FamilyHomeProps) {
  const { athlete, today, hasConsent, mayDecide, sessions, pain, arm } = props;
  const home = `/family/${athlete.athleteId}`;
  return (
    <>
      <PageHeading
        place={dayInWords(today, { long: true })}
        question={`What now for ${athlete.givenName}?`}
      />
      {pain.stop || !hasConsent ? (
        <div className={styles.banners}>
          <PainBanner athlete={athlete} pain={pain} today={today} />
          {hasConsent ? null : (
            <ConsentMissing home={home} givenName={athlete.givenName} mayDecide={mayDecide} />
          )}
        </div>
      ) : null}
      <div>
        <WorkingOn
          {...props}
          athleteId={athlete.athleteId}
          zone={athlete.zone}
          maySend={hasConsent && !pain.stop && !athlete.hasLeft}
        />
        <Section
          title="Coming in"
          aside={
            athlete.hasLeft ? null : (
              <LinkButton href={`${home}/times`} variant="link" isSmall>
                Find a time
              </LinkButton>
            )
          }
        >
          {sessions.length > 0 ? (
            <ComingIn home={home} sessions={sessions} today={today} zone={athlete.zone} />
          ) : (
            <EmptyState title="Nothing is booked">
              {athlete.hasLeft
                ? null
                : "A time that fits the coach, a lane and the arm is found under Times."}
            </EmptyState>
          )}
        </Section>
        <Section title="Throwing today">
          <ArmToday arm={arm} />
          <div className={styles.acts}>
            <LinkButton href={`${home}/throws`}>Log throws</LinkButton>
          </div>
        </Section>
      </div>
    </>
  );
}

function ConsentMissing({
  home,
  givenName,
  mayDecide,
}: {
  home: string;
  givenName: string;
  mayDecide: boolean;
}) {
  return (
    <Notice
      kind="attention"
      word="First"
      title={`There is no consent to video of ${givenName} yet.`}
      isStatic
      actions={mayDecide ? <LinkButton href={`${home}/consent`}>Read it and decide</LinkButton> : undefined}
    >
      Until it is given, no clip can be sent or opened.
      {mayDecide ? "" : " A guardian gives it."}
    </Notice>
  );
}
