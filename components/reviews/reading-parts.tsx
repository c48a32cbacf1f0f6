"use client";
import { Button } from "@/components/ui/button";
import { LinkButton } from "@/components/ui/link-button";
import { Notice } from "@/components/ui/notice";
import { Section } from "@/components/ui/section";
import { voiceAddress } from "@/components/voice/voice-address";
import { VoiceGone, VoicePlayer } from "@/components/voice/voice-player";
import type { ReadingView } from "@/server/api/reviews/shapes";
import { momentInWords } from "@/server/domain/time/words";
import styles from "./reading.module.css";
import { type FilmPlace, filmPlace } from "./reading-places";

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
  onSee: (place: FilmPlace) => void;
  onHear: (place: FilmPlace | null, isPlaying: boolean) => void;
}) {
  const { reading, onSee, onHear } = props;
  const keeps = reading.sent.flatMap((sent) => sent.keeps);
  if (keeps.length === 0) return null;
  return (
    <Section title="Keep">
      <ul className={styles.keeps}>
        {keeps.map((keep) => {
          const place = filmPlace(reading.clips, keep);
          return (
            <li key={keep.id} className={styles.keep}>
              <span>{keep.text}</span>
              {place === null ? null : (
                <Button variant="link" onPress={() => onSee(place)} aria-label={`Show: ${keep.text}`}>
                  Frame {place.frame + 1}
                </Button>
              )}
              {keep.voiceId === null ? null : (
                <div className={styles.keepVoice}>
                  {reading.voicesToHear.includes(keep.voiceId) ? (
                    <VoicePlayer
                      address={voiceAddress(keep.voiceId)}
                      label={keep.text}
                      onPlaying={(isPlaying) => onHear(place, isPlaying)}
                    />
                  ) : (
                    <VoiceGone />
                  )}
                </div>
              )}
            </li>
          );
        })}
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
