import Link from "next/link";
import { EmptyState } from "@/components/ui/empty-state";
import { LinkButton } from "@/components/ui/link-button";
import { Section } from "@/components/ui/section";
import type { CorrectionState } from "@/server/domain/reviews/correction-state";
import { roundInWords, type ToldRound } from "@/server/domain/reviews/round-in-words";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { CorrectionMark } from "./correction-mark";
import styles from "./family-home.module.css";

/** What {@link WorkingOn} takes. */
export interface WorkingOnProps {
  athleteId: string;
  zone: string;
  today: CalendarDay;
  maxOpenCorrections: number;
  /** Consent is given and no pain stands: a clip may be asked for. */
  maySend: boolean;
  corrections: readonly {
    id: string;
    roundId: string;
    checkpointName: string;
    cue: string;
    drill: string;
    state: CorrectionState;
    cameBack: boolean;
  }[];
  round: (ToldRound & { id: string }) | null;
}

/** The open corrections by their cue, the way to the round, and whose turn it is. */
export function WorkingOn(props: WorkingOnProps) {
  const { athleteId, corrections, round, maxOpenCorrections, today, zone } = props;
  const home = `/family/${athleteId}`;
  return (
    <Section
      title="Working on"
      count={`(${corrections.length} of ${maxOpenCorrections})`}
      aside={
        props.maySend ? (
          <LinkButton href={`${home}/send`} variant="primary">
            Send a new clip
          </LinkButton>
        ) : null
      }
    >
      {corrections.length > 0 ? (
        <ol className={styles.corrections}>
          {corrections.map((correction, index) => (
            <li key={correction.id} className={styles.correction}>
              <span className={styles.number} aria-hidden="true">
                {index + 1}
              </span>
              <span className={styles.cue}>{correction.cue || correction.checkpointName}</span>
              <CorrectionMark state={correction.state} cameBack={correction.cameBack} />
              <span className={styles.detail}>
                {correction.cue ? correction.checkpointName : null}
                {correction.drill ? <span className={styles.drill}>Drill: {correction.drill}</span> : null}
              </span>
            </li>
          ))}
        </ol>
      ) : (
        <EmptyState title="Nothing is open">
          {round
            ? "The review will say what to work on."
            : "Send a clip: the coach's review says what to work on."}
        </EmptyState>
      )}
      {round ? (
        <p className={styles.turn}>
          {roundInWords(round, today, zone)} <Link href={`${home}/rounds/${round.id}`}>Open the round</Link>
        </p>
      ) : null}
    </Section>
  );
}
