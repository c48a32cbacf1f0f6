import { ArmToday } from "@/components/throwing/arm-today";
import { LinkButton } from "@/components/ui/link-button";
import { Notice } from "@/components/ui/notice";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import type { ArmAnswer } from "@/server/api/arm-answer";
import { FilmingCautions } from "./filming-cautions";
import { SendClips, type SendClipsProps } from "./send-clips";
import styles from "./send-clips.module.css";

/** What a {@link SendPage} takes: what `clips.sending` and `clips.waiting` answer. */
export interface SendPageProps extends Omit<SendClipsProps, "givenName" | "children"> {
  athleteGivenName: string;
  consentIsLive: boolean;
  arm: ArmAnswer;
}

/** Sending clips: consent first, then how to film, what the book leaves the arm, and the clips themselves. */
export function SendPage({ athleteGivenName, consentIsLive, arm, ...rest }: SendPageProps) {
  return (
    <>
      <PageHeading question={`What shall the coach see of ${athleteGivenName}?`} />
      {consentIsLive ? (
        <>
          <div className={styles.intro}>
            <FilmingCautions />
          </div>
          <SendClips {...rest} givenName={athleteGivenName}>
            <Section title="Before you throw for it">
              <ArmToday arm={arm} />
            </Section>
          </SendClips>
        </>
      ) : (
        <Notice
          kind="attention"
          isStatic
          title={`There is no consent to video of ${athleteGivenName}.`}
          actions={<LinkButton href={`/family/${rest.athleteId}/consent`}>To the consent page</LinkButton>}
        >
          Without it no clip can be sent. A guardian gives it; from 18 on, the athlete.
        </Notice>
      )}
    </>
  );
}
