import { LinkButton } from "@/components/ui/link-button";
import { Notice } from "@/components/ui/notice";
import { momentInWords } from "@/server/domain/time/words";

/** What came of sending. */
export interface SentFacts {
  roundId: string;
  dueAtMs: number;
  pitchesLogged: number;
  clips: number;
}

/** What a {@link SentClips} takes. */
export interface SentClipsProps {
  sent: SentFacts;
  athleteId: string;
  givenName: string;
  zone: string;
}

/** That it is with the academy now, by when it is owed, and what it put on the log. */
export function SentClips({ sent, athleteId, givenName, zone }: SentClipsProps) {
  const home = `/family/${athleteId}`;
  return (
    <Notice
      kind="held"
      word="Sent"
      title={sent.clips === 1 ? "The clip is with the coach." : `${sent.clips} clips are with the coach.`}
      actions={
        <>
          <LinkButton variant="primary" href={`${home}/rounds/${sent.roundId}`}>
            Open the round
          </LinkButton>
          <LinkButton href={home}>Home</LinkButton>
        </>
      }
    >
      <p>It is looked at by {momentInWords(sent.dueAtMs, zone)}. A word comes as soon as it is done.</p>
      <p>
        {sent.pitchesLogged > 0
          ? `${sent.pitchesLogged} pitches were put on ${givenName}’s throw log.`
          : "Nothing was put on the throw log."}
      </p>
    </Notice>
  );
}
