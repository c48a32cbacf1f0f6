"use client";
import { useClipKeys } from "@/components/clips/use-clip-keys";
import { Button } from "@/components/ui/button";
import { LinkButton } from "@/components/ui/link-button";
import { Notice } from "@/components/ui/notice";
import { Section } from "@/components/ui/section";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { RoomView } from "@/server/api/reviews/shapes";
import { isOpen } from "@/server/domain/reviews/correction-state";
import { PictureSent } from "./picture-sent";
import styles from "./room.module.css";
import { RoomClip } from "./room-clip";
import { marksOn } from "./room-edits";
import { RoomOpen } from "./room-open";
import { recapIn } from "./room-recap";
import { RoomSend } from "./room-send";
import { RoomSent } from "./room-sent";
import { RoomSlip } from "./room-slip";
import { markedBeside, type RoomClips, useClipInHand } from "./use-clip-in-hand";

/** A round as it is looked at: before it is taken, while another coach has it, and after it was sent. */
export function RoomReading({ room, clips, start }: RoomClips) {
  const { clip, player, goTo } = useClipInHand(clips, start);
  const marks = marksOn(clip.id, room.eventMarks, room.reviewDraft?.document.eventMarks ?? []);
  const open = room.corrections.filter((each) => isOpen(each.state));
  useClipKeys({
    player,
    marks,
    toMark: (direction) => {
      const frame = markedBeside(marks, player.wanted, direction);
      if (frame !== undefined) player.show(frame);
    },
  });
  return (
    <>
      <div className={styles.notices}>
        <WaysOn room={room} openCount={open.length} />
      </div>
      <div className={styles.room}>
        <RoomClip
          {...{ player, clip, clips, marks }}
          drawing={room.drawing}
          mayGivePoster={room.isCoach}
          onClip={(clipId) => goTo(clipId)}
          overlay={(stage) => <PictureSent {...{ room, stage }} clipId={clip.id} frame={player.frame} />}
        />
        <div>
          <RoomSent room={room} onOpen={goTo} />
          {room.reviewDraft ? (
            <Section title="Being written" aside={`by ${room.reviewDraft.coachName}`}>
              <RoomSlip
                recap={recapIn(room.reviewDraft.document, room)}
                draft={room.reviewDraft.document}
                room={room}
                onOpen={(row) => {
                  if (row.clipId !== null && row.frame !== null) goTo(row.clipId, row.frame);
                }}
              />
            </Section>
          ) : null}
          <Section title="Working on" count={`${open.length} of ${room.maxOpen}`}>
            {open.length === 0 ? (
              <p>Nothing is open.</p>
            ) : (
              <RoomOpen corrections={open} mayRetire={room.isCoach} />
            )}
          </Section>
        </div>
      </div>
    </>
  );
}

interface WaysOnProps {
  room: RoomView;
  openCount: number;
}

/** What can be done with the round from here, by where it stands. */
function WaysOn({ room, openCount }: WaysOnProps) {
  const { round, athlete, coachName, isMine } = room;
  if (round.state === "received" && room.isCoach) return <Take room={room} />;
  if ((round.state === "taken" || round.state === "answered") && !isMine) {
    return (
      <Notice isStatic title={`${coachName ?? "Another coach"} has this round`}>
        Only the coach who has it writes on it. You see it as it stands.
      </Notice>
    );
  }
  if (round.state === "sent" && isMine && openCount === 0) {
    return (
      <Notice
        isStatic
        title="Nothing is open any more"
        actions={
          <RoomSend
            roundId={round.id}
            act="settle"
            missing={[]}
            words="Nothing was open any more."
            givenName={athlete.givenName}
            flush={async () => 0}
          />
        }
      >
        No reply is needed: the round can be settled.
      </Notice>
    );
  }
  if (round.state !== "settled") return null;
  return (
    <Notice
      kind="held"
      word="Settled"
      isStatic
      actions={
        <LinkButton href={`/calendar/find?athlete=${athlete.athleteId}&round=${round.id}`}>
          Book the follow-up
        </LinkButton>
      }
    >
      Bring {athlete.givenName} in to confirm on a mound what holds on film.
    </Notice>
  );
}

function Take({ room }: { room: RoomView }) {
  const take = useCommand((api, input: { roundId: string }, once) => api.rounds.take.mutate(input, once));
  return (
    <>
      <Notice
        isStatic
        title="Nobody has taken this round yet"
        actions={
          <Button
            variant="primary"
            isPending={take.pending}
            onPress={() => void take.run({ roundId: room.round.id })}
          >
            Take it and review
          </Button>
        }
      >
        Taking it makes the review yours to write.
      </Notice>
      <CommandProblem problem={take.problem} />
    </>
  );
}
