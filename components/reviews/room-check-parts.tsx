"use client";
import { useState } from "react";
import { EventDurations } from "@/components/clips/event-durations";
import type { MarkedFrames } from "@/components/clips/event-strip";
import { KeyList } from "@/components/clips/key-list";
import { Player, type PlayerProps } from "@/components/clips/player";
import { filmFacts } from "@/components/clips/player-state";
import type { ClipPair } from "@/components/clips/use-clip-pair";
import { RadioChoice } from "@/components/ui/radio-choice";
import { Section } from "@/components/ui/section";
import { SwitchField } from "@/components/ui/switch-field";
import type { ClipView, RoomView } from "@/server/api/reviews/shapes";
import type { Phase } from "@/server/domain/mechanics/delivery";
import { VERDICT_WORDS } from "@/server/domain/reviews/correction-state";
import type { CheckDraft } from "@/server/domain/reviews/draft";
import { dayInWords } from "@/server/domain/time/words";
import { CheckpointTools } from "./checkpoint-tools";
import { clipFacts, clipName } from "./clip-words";
import { PictureActs } from "./picture-acts";
import { PictureList } from "./picture-list";
import { PictureOverlay } from "./picture-overlay";
import styles from "./room.module.css";
import check from "./room-check.module.css";
import { isHandTaken } from "./room-clip";
import { judge } from "./room-edits";
import { RoomOutline } from "./room-outline";
import outline from "./room-outline.module.css";
import { offered } from "./room-recap";
import { RoomTimeBase } from "./room-time-base";
import type { ClipInHand } from "./use-clip-in-hand";
import type { PictureTools } from "./use-picture-tools";
import type { RoomDraft } from "./use-room-draft";

/** What a {@link CheckSide} takes. */
export interface CheckSideProps {
  word: "Old" | "New";
  inHand: ClipInHand;
  clips: readonly ClipView[];
  pair: ClipPair;
  marks: MarkedFrames;
  drawing: RoomView["drawing"];
  /** The means to measure and to draw on it; where there are none, `overlay` shows what was. */
  tools?: PictureTools;
  overlay?: PlayerProps["overlay"];
}

/** One of the two clips. */
export function CheckSide(props: CheckSideProps) {
  const { word, inHand, clips, pair, marks, drawing, tools, overlay } = props;
  const { clip, goTo } = inHand;
  const driven = word === "Old" ? pair.older : pair.newer;
  const filmed = clip.filmedOn === null ? "" : `, ${dayInWords(clip.filmedOn)}`;
  return (
    <div className={check.side}>
      {clips.length > 1 ? (
        <RadioChoice
          className={styles.choice}
          label={`${word} clip`}
          options={clips.map((each) => ({
            value: each.id,
            label: `${clipName(each)}${each.filmedOn === null ? "" : `, ${dayInWords(each.filmedOn)}`}`,
          }))}
          value={clip.id}
          onChange={(clipId) => goTo(clipId)}
        />
      ) : (
        <span />
      )}
      <Player
        player={driven}
        label={`${word}: ${clipName(clip).toLowerCase()}${filmed}`}
        isLabelShown
        isCompact
        state={filmFacts(clip, drawing)}
        marks={marks}
        isHandTaken={isHandTaken(tools)}
        overlay={tools ? (stage) => <PictureOverlay tools={tools} stage={stage} /> : overlay}
      />
      <p className={styles.facts}>
        {clipFacts(clip)
          .slice(clip.filmedOn === null ? 0 : 1)
          .map((fact) => (
            <span key={fact}>{fact}</span>
          ))}
        {clip.note ? <span>“{clip.note}”</span> : null}
      </p>
    </div>
  );
}

/** What is known of one of the two clips by its moments, and what is measured and drawn on it. */
export function CheckFindings({ inHand, marks, tools }: Pick<CheckSideProps, "inHand" | "marks" | "tools">) {
  const { clip } = inHand;
  return (
    <div>
      <EventDurations marks={marks} capturedFps={clip.capturedFps} frameTimesMs={clip.frameTimesMs} />
      {tools ? <PictureActs tools={tools} /> : null}
      {tools ? <PictureList tools={tools} /> : null}
      <RoomTimeBase clip={clip} marks={marks} mayChange />
    </div>
  );
}

/** Whether the two go together, and how. */
export function CheckTogether({ pair }: { pair: ClipPair }) {
  return (
    <div className={check.together}>
      <SwitchField label="Step both together" isSelected={pair.isTogether} onChange={pair.setTogether} />
      <p className={check.hint}>
        {pair.isTogether
          ? "A moment marked on both lines them up; from there they go by the same clock."
          : "Each goes its own way. Switching this on lines them up as they stand."}
      </p>
      <KeyList hasMarks />
    </div>
  );
}

/** What of the new clip is judged, checkpoint by checkpoint. */
export function JudgeNew(props: {
  room: RoomView;
  draft: RoomDraft<"check">;
  newer: ClipInHand;
  marks: MarkedFrames;
  tools: PictureTools;
}) {
  const { room, draft, newer, marks, tools } = props;
  const { clip, player } = newer;
  const [phase, setPhase] = useState<Phase | null>(null);
  return (
    <Section title="Judge the new clip" aside={`on the frame you see, ${player.inHand + 1}`}>
      <RoomOutline
        checkpoints={offered(room.checkpoints, draft.document)}
        clip={clip}
        marks={marks}
        judgements={draft.document.judgements}
        latest={room.latestJudgements}
        phase={phase}
        onPhase={(next, frame) => {
          setPhase(next);
          if (frame !== undefined) player.show(frame);
        }}
        onScore={(checkpoint, score) =>
          draft.change((now) => judge(now, checkpoint.id, { clipId: clip.id, frame: player.inHand }, score))
        }
        under={(checkpoint) => (
          <div className={outline.acts}>
            <CheckpointTools checkpoint={checkpoint} tools={tools} />
          </div>
        )}
      />
    </Section>
  );
}

/** A check in a few lines, so that two can be told apart. */
export function CheckSummary({ room, document }: { room: RoomView; document: CheckDraft }) {
  const nameOf = (id: string) => {
    const correction = room.corrections.find((each) => each.id === id);
    return correction ? correction.cue || correction.checkpointName : "A correction";
  };
  return (
    <ul className={styles.missing}>
      {document.verdicts.map(({ correctionId, verdict, note }) => (
        <li key={correctionId}>
          {nameOf(correctionId)}: {verdict === null ? "no verdict" : VERDICT_WORDS[verdict].toLowerCase()}
          {note.trim() === "" ? "" : `, “${note.trim()}”`}
        </li>
      ))}
      {document.retirements.map(({ correctionId, reason }) => (
        <li key={correctionId}>
          {nameOf(correctionId)}: no longer wanted, “{reason}”
        </li>
      ))}
      {document.note.trim() === "" ? null : <li>“{document.note.trim()}”</li>}
    </ul>
  );
}
