"use client";
import { useRef } from "react";
import { useClipKeys } from "@/components/clips/use-clip-keys";
import { useClipPair } from "@/components/clips/use-clip-pair";
import { usePoster } from "@/components/clips/use-poster";
import { Notice } from "@/components/ui/notice";
import { Section } from "@/components/ui/section";
import { TextArea } from "@/components/ui/text-area";
import type { ClipView, CorrectionView } from "@/server/api/reviews/shapes";
import { DELIVERY_EVENTS, type DeliveryEvent } from "@/server/domain/mechanics/delivery";
import { isOpen } from "@/server/domain/reviews/correction-state";
import { DRAFT_LIMITS, EMPTY_CHECK_DRAFT } from "@/server/domain/reviews/draft";
import { asTheDeliveryRuns } from "@/server/domain/reviews/recap";
import { PairStrip } from "./pair-strip";
import { PictureBar } from "./picture-bar";
import { PictureSent } from "./picture-sent";
import styles from "./room.module.css";
import check from "./room-check.module.css";
import { CheckFindings, CheckSide, CheckSummary, CheckTogether, JudgeNew } from "./room-check-parts";
import { checkWords, missingInCheck, sameMoment } from "./room-check-words";
import { RoomDraftProblems } from "./room-draft-problems";
import { markEvent, marksOn } from "./room-edits";
import { RoomSend } from "./room-send";
import { RoomStatus } from "./room-status";
import { RoomVerdict } from "./room-verdict";
import { markedBeside, type RoomClips, useClipInHand } from "./use-clip-in-hand";
import { usePictureTools } from "./use-picture-tools";
import { useRoomDraft } from "./use-room-draft";

type Clips = readonly [ClipView, ...ClipView[]];

/** Old and new beside each other, and a verdict for every open correction. `replies` are the new clips, one at least. */
export function RoomCheck({ room, replies, start }: Pick<RoomClips, "room" | "start"> & { replies: Clips }) {
  const draft = useRoomDraft("check", room.round.id, room.checkDraft, EMPTY_CHECK_DRAFT);
  const isNew = (clip: ClipView) => replies.some((each) => each.id === clip.id);
  const isOwn = (clip: ClipView) => clip.roundId === room.round.id;
  /* Filmed from where the new one was, before all: two views are not to be compared. */
  const likeness = (clip: ClipView) => 2 * Number(clip.view === replies[0].view) + Number(isOwn(clip));
  const [oldest, ...others] = room.clips
    .filter((clip) => !isNew(clip) && (isOwn(clip) || clip.state !== "expired"))
    .sort((a, b) => likeness(b) - likeness(a));
  const older = useClipInHand(oldest ? [oldest, ...others] : replies, start);
  const newer = useClipInHand(replies, start);
  const pair = useClipPair(older.player, newer.player);
  const { drawing } = room;
  const sides = useRef<HTMLDivElement>(null);
  const written = draft.document.eventMarks;
  const oldMarks = marksOn(older.clip.id, room.eventMarks, written);
  const newMarks = marksOn(newer.clip.id, room.eventMarks, written);
  const open = asTheDeliveryRuns(room.corrections.filter((each) => isOpen(each.state)));
  const held = room.corrections.filter((each) => each.state === "held");
  usePoster(newer.player, room.isCoach);

  const markOn = (clipId: string) => (event: DeliveryEvent, frame: number | null) =>
    draft.change((now) => markEvent(now, clipId, event, frame));
  useClipKeys({
    player: pair.newer,
    marks: newMarks,
    mark: (at) => {
      const event = DELIVERY_EVENTS[at];
      if (event) markOn(newer.clip.id)(event, newer.player.inHand);
    },
    toMark: (direction) => {
      const frame = markedBeside(newMarks, newer.player.wanted, direction);
      if (frame !== undefined) pair.newer.show(frame);
    },
  });
  const tools = usePictureTools({ room, draft, ...newer, player: pair.newer, events: newMarks });
  const verdict = { draft, zone: room.zone, clips: room.clips, newer: newer.player };

  const verdictOn = (each: CorrectionView, index: number) => (
    <RoomVerdict
      key={each.id}
      {...verdict}
      number={index + 1}
      correction={each}
      onShow={() => {
        const places = sameMoment(each, { oldMarks, newMarks }, draft.document);
        if (each.clipId !== null && places.old !== null) older.goTo(each.clipId, places.old);
        if (places.new !== null) newer.player.show(places.new);
        sides.current?.scrollIntoView({ block: "start" });
      }}
    />
  );

  return (
    <>
      <div className={styles.notices}>
        <RoomDraftProblems
          draft={draft}
          zone={room.zone}
          summary={(each) => <CheckSummary room={room} document={each} />}
        />
      </div>
      <div ref={sides} className={check.clips}>
        <CheckSide
          {...{ pair, drawing }}
          word="Old"
          inHand={older}
          clips={oldest ? [oldest, ...others] : replies}
          marks={oldMarks}
          overlay={(stage) => (
            <PictureSent {...{ room, stage }} clipId={older.clip.id} frame={older.player.frame} />
          )}
        />
        <CheckSide {...{ pair, drawing, tools }} word="New" inHand={newer} clips={replies} marks={newMarks} />
      </div>
      <CheckTogether pair={pair} />
      <Section title="Moments, old above new" aside="a pair opens both clips on it">
        <PairStrip
          pair={pair}
          older={{ player: older.player, marks: oldMarks, onMark: markOn(older.clip.id) }}
          newer={{ player: newer.player, marks: newMarks, onMark: markOn(newer.clip.id) }}
          corrections={open}
        />
        <div className={check.findings}>
          <CheckFindings inHand={older} marks={oldMarks} />
          <CheckFindings inHand={newer} marks={newMarks} tools={tools} />
        </div>
      </Section>
      <Section title="Did each correction take?" count={open.length}>
        {open.length === 0 ? (
          <Notice isStatic>Nothing is open any more: the round can be settled.</Notice>
        ) : null}
        <ol className={check.verdicts}>{open.map(verdictOn)}</ol>
        {held.length > 0 ? (
          <details>
            <summary>Held before ({held.length}): judge one again if it slipped</summary>
            <ol className={check.verdicts}>
              {held.map((each, index) => verdictOn(each, open.length + index))}
            </ol>
          </details>
        ) : null}
      </Section>
      <JudgeNew room={room} draft={draft} newer={newer} marks={newMarks} tools={tools} />
      <Section title="A word on the whole">
        <TextArea
          label="Your own word, read after the verdicts"
          isOptional
          rows={2}
          value={draft.document.note}
          maxLength={DRAFT_LIMITS.noteLength}
          onChange={(note) => draft.change((now) => ({ ...now, note }))}
        />
      </Section>
      <div className={styles.foot}>
        <PictureBar tools={tools} />
        <RoomStatus status={draft.status} zone={room.zone} />
        <RoomSend
          roundId={room.round.id}
          act="settle"
          missing={missingInCheck(draft.document, room)}
          words={checkWords(draft.document, room)}
          givenName={room.athlete.givenName}
          flush={draft.flush}
          onOvertaken={draft.overtaken}
        />
      </div>
    </>
  );
}
