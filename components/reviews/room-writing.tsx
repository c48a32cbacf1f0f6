"use client";
import { useState } from "react";
import { useClipKeys } from "@/components/clips/use-clip-keys";
import { Section } from "@/components/ui/section";
import { DELIVERY_EVENTS, type Phase } from "@/server/domain/mechanics/delivery";
import { isOpen } from "@/server/domain/reviews/correction-state";
import { EMPTY_REVIEW_DRAFT } from "@/server/domain/reviews/draft";
import { recapInWords } from "@/server/domain/reviews/recap";
import { CheckpointTools } from "./checkpoint-tools";
import { PictureBar } from "./picture-bar";
import styles from "./room.module.css";
import { RoomClip } from "./room-clip";
import { RoomDraftProblems } from "./room-draft-problems";
import { judge, markEvent, marksOn } from "./room-edits";
import { RoomLine } from "./room-line";
import { RoomOutline } from "./room-outline";
import { RoomOwnKeeps } from "./room-own-keeps";
import { missingInReview, offered, recapIn } from "./room-recap";
import { RoomSend } from "./room-send";
import { RoomSlip } from "./room-slip";
import { RoomStatus } from "./room-status";
import { RoomStillOpen } from "./room-still-open";
import { UnderCheckpoint } from "./room-under";
import { RoomUsual } from "./room-usual";
import { markedBeside, type RoomClips, useClipInHand } from "./use-clip-in-hand";
import { usePictureTools } from "./use-picture-tools";
import { useRoomDraft } from "./use-room-draft";
import { useSaying } from "./use-saying";
import { useUnsentNotes } from "./use-unsent-notes";

/** The review of a round as its coach writes it. `clips` are the round's own, one at least. */
export function RoomWriting({ room, clips, start }: RoomClips) {
  const draft = useRoomDraft("review", room.round.id, room.reviewDraft, EMPTY_REVIEW_DRAFT);
  const { document, change } = draft;
  const { clip, player, goTo } = useClipInHand(clips, start);
  const [phase, setPhase] = useState<Phase | null>("wind_up");
  const marks = marksOn(clip.id, room.eventMarks, document.eventMarks);
  const recap = recapIn(document, room);
  const open = room.corrections.filter((each) => isOpen(each.state));
  const place = { clipId: clip.id, frame: player.inHand };
  const saying = useSaying({ room, clips, draft, clip, place, phase, setPhase });
  const unsentNotes = useUnsentNotes(room.round.id, document);
  const tools = usePictureTools({ room, draft, clip, player, events: marks });

  useClipKeys({
    player,
    marks,
    mark: (at) => {
      const event = DELIVERY_EVENTS[at];
      if (event && player.picture === "ready") change((now) => markEvent(now, clip.id, event, player.inHand));
    },
    toMark: (direction) => {
      const frame = markedBeside(marks, player.wanted, direction);
      if (frame !== undefined) player.show(frame);
    },
  });

  return (
    <>
      <div className={styles.notices}>
        <RoomDraftProblems
          draft={draft}
          zone={room.zone}
          summary={(each) => <p className={styles.recap}>{recapInWords(recapIn(each, room))}</p>}
        />
      </div>
      <div className={styles.room}>
        <RoomClip
          {...{ player, clip, clips, marks, tools }}
          drawing={room.drawing}
          mayGivePoster={room.isCoach}
          onClip={(clipId) => goTo(clipId)}
          onMark={(event, frame) => change((now) => markEvent(now, clip.id, event, frame))}
        />
        <div>
          <Section title="Delivery" aside={`judged on the frame you see, ${player.inHand + 1}`}>
            <RoomLine saying={saying} />
            <RoomOutline
              checkpoints={offered(room.checkpoints, document)}
              clip={clip}
              marks={marks}
              judgements={document.judgements}
              latest={room.latestJudgements}
              phase={phase}
              onPhase={(next, frame) => {
                setPhase(next);
                if (frame !== undefined) player.show(frame);
              }}
              onScore={(checkpoint, score) => change((now) => judge(now, checkpoint.id, place, score))}
              slipCount={(own) => document.corrections.filter((each) => each.phase === own).length}
              under={(checkpoint) => (
                <UnderCheckpoint
                  {...{ checkpoint, draft, recap, saying, place, goTo }}
                  maxOpen={room.maxOpen}
                  tools={<CheckpointTools checkpoint={checkpoint} tools={tools} />}
                />
              )}
            />
          </Section>
          <Section title="Slip" count={`${open.length + recap.count} of ${room.maxOpen}`}>
            <RoomUsual saying={saying} />
            <RoomSlip
              recap={recap}
              draft={document}
              room={room}
              onOpen={(row) => {
                setPhase(row.phase);
                if (row.clipId !== null && row.frame !== null) goTo(row.clipId, row.frame);
              }}
            />
            <RoomOwnKeeps {...{ draft, saying }} />
            <RoomStillOpen {...{ draft, saying, place, goTo }} />
          </Section>
        </div>
      </div>
      <div className={styles.foot}>
        <PictureBar tools={tools} />
        <div className={styles.footWords}>
          <RoomStatus status={draft.status} zone={room.zone} />
          <span>
            Slip {open.length + recap.count} of {room.maxOpen}
          </span>
        </div>
        <RoomSend
          roundId={room.round.id}
          act="send"
          missing={missingInReview(
            document,
            room,
            clips,
            open.map((each) => each.id),
          )}
          late={unsentNotes}
          words={recapInWords(recap)}
          givenName={room.athlete.givenName}
          flush={draft.flush}
          onOvertaken={draft.overtaken}
        />
      </div>
    </>
  );
}
