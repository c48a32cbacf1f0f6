"use client";
import { Button } from "@/components/ui/button";
import { LinkButton } from "@/components/ui/link-button";
import { Notice } from "@/components/ui/notice";
import { Section } from "@/components/ui/section";
import type { ReadingView } from "@/server/api/reviews/shapes";
import { momentInWords } from "@/server/domain/time/words";
import styles from "./reading.module.css";

/** The way to send a new clip into this round, or why not yet. */
export function ReadingReply({ reading }: { reading: ReadingView }) {
  const { reply, round, athlete } = reading;
  if (!reply.isWanted) return reply.words ? <Notice isStatic>{reply.words}</Notice> : null;
  return (
    <Section title="A new clip">
      <div className={styles.reply} data-print="no">
        {reply.isOpen ? (
          <LinkButton variant="primary" href={`/family/${athlete.athleteId}/send?round=${round.id}`}>
            Send a new clip
          </LinkButton>
        ) : (
          <Button variant="primary" isDisabled>
            Send a new clip
          </Button>
        )}
        <p>{reply.words}</p>
      </div>
    </Section>
  );
}

/** What is good and should stay. */
export function ReadingKeeps(props: {
  reading: ReadingView;
  onShow: (clipId: string, frame: number) => void;
}) {
  const keeps = props.reading.sent.flatMap((sent) => sent.keeps);
  if (keeps.length === 0) return null;
  return (
    <Section title="Keep">
      <ul className={styles.keeps}>
        {keeps.map(({ id, text, clipId, frame }) => (
          <li key={id} className={styles.keep}>
            <span>{text}</span>
            {clipId === null || frame === null ? null : (
              <Button variant="link" onPress={() => props.onShow(clipId, frame)} aria-label={`Show: ${text}`}>
                Frame {frame + 1}
              </Button>
            )}
          </li>
        ))}
      </ul>
    </Section>
  );
}

/** The coach's own words: on the check, and what was added to either since. */
export function ReadingWords({ reading }: { reading: ReadingView }) {
  const words = reading.sent.flatMap((sent) => [
    ...(sent.note ? [{ id: sent.id, coachName: sent.coachName, text: sent.note, atMs: sent.sentAtMs }] : []),
    ...sent.addenda,
  ]);
  if (words.length === 0) return null;
  return (
    <Section title="The coach's word">
      {words.map((each) => (
        <p key={each.id} className={styles.word}>
          {each.text}{" "}
          <cite>
            {each.coachName}, {momentInWords(each.atMs, reading.zone)}
          </cite>
        </p>
      ))}
    </Section>
  );
}
