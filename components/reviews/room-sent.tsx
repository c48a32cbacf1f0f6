"use client";
import { useState } from "react";
import { CorrectionMark } from "@/components/home/correction-mark";
import { Button } from "@/components/ui/button";
import { Section } from "@/components/ui/section";
import { TextArea } from "@/components/ui/text-area";
import { showToast } from "@/components/ui/toast";
import { voiceAddress } from "@/components/voice/voice-address";
import { VoicePlayer } from "@/components/voice/voice-player";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { CorrectionView, RoomView, SentView } from "@/server/api/reviews/shapes";
import { PHASE_WORDS } from "@/server/domain/mechanics/delivery";
import { DRAFT_LIMITS } from "@/server/domain/reviews/draft";
import { asTheDeliveryRuns } from "@/server/domain/reviews/recap";
import { momentInWords } from "@/server/domain/time/words";
import { happeningInWords, practiceInWords } from "./correction-words";
import styles from "./room-sent.module.css";

/** What {@link RoomSent} takes. */
export interface RoomSentProps {
  room: RoomView;
  onOpen: (clipId: string, frame: number) => void;
}

/** What was sent on the round: it is not changed any more, only followed by a further word. */
export function RoomSent({ room, onOpen }: RoomSentProps) {
  return (
    <>
      {room.sent.map((sent) => (
        <Section
          key={sent.id}
          title={sent.kind === "review" ? "The review as sent" : "The check as sent"}
          aside={`${sent.coachName}, ${momentInWords(sent.sentAtMs, room.zone)}`}
        >
          <CorrectionList room={room} corrections={correctionsIn(room, sent)} onOpen={onOpen} />
          {sent.keeps.length > 0 ? (
            <ul className={styles.list} aria-label="Keep">
              {sent.keeps.map((keep) => (
                <li key={keep.id} className={styles.entry}>
                  <span aria-hidden="true">–</span>
                  <span>
                    <b>Keep</b> {keep.text}
                  </span>
                  <FrameLink clipId={keep.clipId} frame={keep.frame} onOpen={onOpen} />
                  <Spoken voiceId={keep.voiceId} label={keep.text} />
                </li>
              ))}
            </ul>
          ) : null}
          {sent.note ? <p className={styles.word}>“{sent.note}”</p> : null}
          {sent.addenda.map((each) => (
            <p key={each.id} className={styles.word}>
              Added {momentInWords(each.atMs, room.zone)} by {each.coachName}: {each.text}
            </p>
          ))}
          {room.isMine && sent === room.sent.at(-1) ? <AddendumForm reviewId={sent.id} /> : null}
        </Section>
      ))}
    </>
  );
}

/** A review lists what it gave and what it showed again, a check what it judged. */
function correctionsIn(room: RoomView, sent: SentView): CorrectionView[] {
  const isIn = (each: CorrectionView) =>
    (sent.kind === "review" && each.roundId === room.round.id) ||
    each.happenings.some((one) => one.roundId === room.round.id && one.atMs === sent.sentAtMs);
  return asTheDeliveryRuns(room.corrections.filter(isIn));
}

function CorrectionList(props: RoomSentProps & { corrections: readonly CorrectionView[] }) {
  const { room, corrections, onOpen } = props;
  return (
    <ol className={styles.list}>
      {corrections.map((each, index) => (
        <li key={each.id} className={styles.entry}>
          <span className={styles.number}>{index + 1}</span>
          <p className={styles.cue}>{each.cue || each.checkpointName}</p>
          <FrameLink clipId={each.clipId} frame={each.frame} onOpen={onOpen} />
          <p className={styles.detail}>
            {each.checkpointName}, {PHASE_WORDS[each.phase].toLowerCase()}
            {each.drill ? `. Drill: ${each.drill}` : ""}
          </p>
          <Spoken voiceId={each.voiceId} label={each.cue || each.checkpointName} />
          <p className={styles.detail}>
            <CorrectionMark state={each.state} cameBack={each.cameBack} />
          </p>
          <ul className={styles.history}>
            {each.happenings.slice(1).map((one) => (
              <li key={`${one.atMs} ${one.kind}`}>{happeningInWords(one, room.zone)}</li>
            ))}
            <li className={styles.detail}>Practice: {practiceInWords(each.practisedOn)}</li>
          </ul>
        </li>
      ))}
    </ol>
  );
}

function Spoken({ voiceId, label }: { voiceId: string | null; label: string }) {
  if (voiceId === null) return null;
  return (
    <div className={styles.detail}>
      <VoicePlayer address={voiceAddress(voiceId)} label={label} />
    </div>
  );
}

function FrameLink(props: { clipId: string | null; frame: number | null; onOpen: RoomSentProps["onOpen"] }) {
  const { clipId, frame, onOpen } = props;
  if (clipId === null || frame === null) return <span />;
  return (
    <Button variant="link" onPress={() => onOpen(clipId, frame)}>
      Frame {frame + 1}
    </Button>
  );
}

function AddendumForm({ reviewId }: { reviewId: string }) {
  const [text, setText] = useState("");
  const add = useCommand((api, input: { reviewId: string; text: string }, once) =>
    api.reviews.addAddendum.mutate(input, once),
  );
  const go = async () => {
    if (!(await add.run({ reviewId, text }))) return;
    setText("");
    showToast({ text: "The further word is with the family." });
  };
  return (
    <div className={styles.addendum}>
      <TextArea
        label="A further word"
        hint="What was sent stays as it is; this is added to it and sent to the family."
        rows={2}
        value={text}
        maxLength={DRAFT_LIMITS.noteLength}
        onChange={setText}
      />
      <CommandProblem problem={add.problem} />
      <Button isDisabled={text.trim() === ""} isPending={add.pending} onPress={() => void go()}>
        Add it
      </Button>
    </div>
  );
}
