import Link from "next/link";
import { LinkButton } from "@/components/ui/link-button";
import { Notice } from "@/components/ui/notice";
import { PageHeading } from "@/components/ui/page-heading";
import type { ClipView, RoomView } from "@/server/api/reviews/shapes";
import { ROUND_STATE_WORDS } from "@/server/domain/reviews/round-in-words";
import { momentInWords, spanInWords } from "@/server/domain/time/words";
import { RoomCheck } from "./room-check";
import { RoomReading } from "./room-reading";
import { RoomRetake } from "./room-retake";
import { RoomWriting } from "./room-writing";
import type { ClipStart } from "./use-clip-in-hand";

/** What a {@link Room} takes. */
export interface RoomProps {
  room: RoomView;
  nowMs: number;
  /** The clip and frame to begin with; the first frame of the first clip where none is named. */
  start?: ClipStart | undefined;
}

/** The review room of one round, by where it stands and whose it is. */
export function Room({ room, nowMs, start }: RoomProps) {
  const { round, athlete } = room;
  const isCheck = round.state === "answered" && room.isMine;
  return (
    <>
      <PageHeading
        question={isCheck ? "Did it take?" : "What do I see?"}
        place={
          <>
            <Link href="/reviews">Reviews</Link>
            {" / "}
            <Link href={`/athletes/${athlete.athleteId}`}>{athlete.name}</Link>, {athlete.ageYears}, throws{" "}
            {athlete.throws}-handed. {standsInWords(room, nowMs)}
          </>
        }
        actions={
          <>
            <LinkButton href={`/reviews/${round.id}/compare`}>Old and new</LinkButton>
            {room.isMine && (round.state === "taken" || isCheck) ? (
              <RoomRetake roundId={round.id} athleteName={athlete.name} />
            ) : null}
          </>
        }
      />
      <Body room={room} isCheck={isCheck} start={start} />
    </>
  );
}

interface BodyProps extends Pick<RoomProps, "room" | "start"> {
  isCheck: boolean;
}

function Body({ room, isCheck, start }: BodyProps) {
  const own = room.clips.filter((clip) => clip.roundId === room.round.id);
  const first = some(own.filter((clip) => clip.part === "first"));
  const replies = some(own.filter((clip) => clip.part === "reply"));
  const all = some(own);
  if (isCheck && replies) return <RoomCheck key={room.round.state} {...{ room, replies, start }} />;
  if (room.round.state === "taken" && room.isMine && first)
    return <RoomWriting {...{ room, start }} clips={first} />;
  if (all) return <RoomReading key={room.round.state} {...{ room, start }} clips={all} />;
  return (
    <Notice isStatic title="There is no clip in this round">
      The clip that came could not be used, and no other has come yet.
    </Notice>
  );
}

function some(clips: readonly ClipView[]): readonly [ClipView, ...ClipView[]] | null {
  const [one, ...others] = clips;
  return one ? [one, ...others] : null;
}

/** Since when the round is here, where it stands and how long is left. */
function standsInWords({ round, zone }: RoomView, nowMs: number): string {
  const due = round.dueAtMs === null ? "" : `, ${dueInWords(round.dueAtMs, nowMs, zone)}`;
  const reason = round.retakeReason === "" ? "" : `: “${round.retakeReason}”`;
  return `Received ${momentInWords(round.receivedAtMs, zone)}, ${ROUND_STATE_WORDS[round.state]}${due}${reason}`;
}

function dueInWords(dueAtMs: number, nowMs: number, zone: string): string {
  const span = spanInWords(dueAtMs - nowMs);
  if (dueAtMs < nowMs) return `late by ${span}`;
  return `due ${momentInWords(dueAtMs, zone)}, in ${span}`;
}
