"use client";

import { type ReactNode, useState } from "react";
import { Button } from "@/components/ui/button";
import { DateField } from "@/components/ui/date-field";
import { Form, FormActions } from "@/components/ui/form";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { RoundToAnswer } from "@/server/api/rounds-to-answer";
import type { FilmedSpeed } from "@/server/domain/clips/capture-rate";
import type { SendClipInput } from "@/server/domain/clips/send-clip";
import type { ThrowingHand } from "@/server/domain/people/person";
import { type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";
import { ChooseClips } from "./choose-clips";
import { ClipCard } from "./clip-card";
import { type ClipItem, isUnderWay, missingOf, NOTHING_SAID, type SaidOfClip, sayingOf } from "./clip-item";
import { HalfSentClips } from "./half-sent-clips";
import { RoundChoice } from "./round-choice";
import styles from "./send-clips.module.css";
import { SentClips, type SentFacts } from "./sent-clips";
import { SpeedChoice } from "./speed-choice";
import { useClipUploads, type WaitingClip } from "./use-clip-uploads";

/** What a {@link SendClips} takes. */
export interface SendClipsProps {
  athleteId: string;
  givenName: string;
  throws: ThrowingHand;
  today: CalendarDay;
  zone: string;
  rounds: readonly RoundToAnswer[];
  /** The round the page was opened for; null for a new one. */
  roundId: string | null;
  limits: { clips: number; durationMs: number };
  waiting: readonly WaitingClip[];
  /** Stands below until the clips are sent. */
  children?: ReactNode;
}

interface Sending {
  athleteId: string;
  roundId: string | null;
  clips: SendClipInput[];
  filmedSpeed: FilmedSpeed;
}

/** From the phone to the coach: choose, say what is on each clip, send. Uploading goes on while the words are written. */
export function SendClips(props: SendClipsProps) {
  const { athleteId, zone, limits } = props;
  const [roundId, setRoundId] = useState(props.roundId);
  const uploads = useClipUploads(athleteId, props.waiting);
  const saying = useSaying(uploads.items, props.today, zone);
  const [isChecked, setIsChecked] = useState(false);
  const [sent, setSent] = useState<SentFacts | null>(null);
  const send = useCommand((api, input: Sending, once) => api.rounds.send.mutate(input, once));
  const { going, underWay } = saying;
  const errors = isChecked ? saying.missing : NOTHING_MISSING;

  async function submit() {
    setIsChecked(true);
    const { missing, clips, filmedSpeed } = saying;
    if (underWay > 0 || Object.keys(missing).length > 0 || !filmedSpeed) return;
    const answer = await send.run({ athleteId, roundId, clips, filmedSpeed });
    if (answer) setSent({ ...answer, clips: clips.length });
  }

  if (sent) return <SentClips sent={sent} athleteId={athleteId} givenName={props.givenName} zone={zone} />;
  const inHand = uploads.items.map((item) => item.byteCount);
  return (
    <>
      <RoundChoice rounds={props.rounds} chosenId={roundId} onChoose={setRoundId} />
      <HalfSentClips {...{ athleteId, zone, inHand }} />
      <Form errors={errors} onSubmit={submit} aria-label="Send clips">
        {going.length > 0 ? (
          <>
            <DateField
              label="Filmed on"
              hint="All clips of a round are of one day."
              name="filmedOn"
              value={saying.filmedOn}
              onChange={saying.setFilmedOn}
              max={props.today}
              isRequired
            />
            <SpeedChoice
              value={saying.filmedSpeed}
              error={errors.filmedSpeed}
              onChange={saying.setFilmedSpeed}
            />
          </>
        ) : null}
        <ul className={styles.clips}>
          {uploads.items.map((item) => (
            <ClipCard
              key={item.key}
              item={item}
              place={going.indexOf(item)}
              pitcher={props}
              said={saying.saidOf(item.key)}
              errors={errors}
              onSay={(words) => saying.say(item.key, words)}
              onHold={() => uploads.hold(item.key)}
              onGoOn={() => uploads.goOn(item.key)}
              onTakeBack={() => uploads.takeBack(item.key)}
            />
          ))}
        </ul>
        <ChooseClips
          left={Math.max(0, limits.clips - going.length)}
          isFirst={uploads.items.length === 0}
          maxMinutes={limits.durationMs / 60_000}
          onChoose={(files) => {
            uploads.add(files);
            saying.noteDay(files[0]?.lastModified);
          }}
        />
        <CommandProblem problem={send.problem} />
        {going.length > 0 ? (
          <SendBar clips={going.length} isPending={send.pending} isAsked={isChecked} underWay={underWay} />
        ) : null}
      </Form>
      {props.children}
    </>
  );
}

const NOTHING_MISSING: Record<string, string> = {};

/** What the family says of the clips in hand, what is missing, and what would be sent. */
function useSaying(items: readonly ClipItem[], today: CalendarDay, zone: string) {
  const [said, setSaid] = useState<Record<string, SaidOfClip>>({});
  const [filmedOn, setFilmedOn] = useState<CalendarDay | null>(null);
  const [filmedSpeed, setFilmedSpeed] = useState<FilmedSpeed | null>(null);
  const saidOf = (key: string) => said[key] ?? NOTHING_SAID;
  const going = items.filter((item) => item.standing !== "refused");
  return {
    going,
    underWay: going.filter((item) => isUnderWay(item.standing)).length,
    filmedOn,
    setFilmedOn,
    filmedSpeed,
    setFilmedSpeed,
    saidOf,
    say: (key: string, words: Partial<SaidOfClip>) =>
      setSaid((all) => ({ ...all, [key]: { ...(all[key] ?? NOTHING_SAID), ...words } })),
    missing: missingOf(
      going.map((item) => saidOf(item.key)),
      filmedOn,
      filmedSpeed,
    ),
    clips: going.flatMap((item) => sayingOf(item.clipId, saidOf(item.key), filmedOn) ?? []),
    /** A file's own day stands until somebody says another; a phone whose clock is ahead does not film tomorrow. */
    noteDay(filmedAtMs: number | undefined) {
      if (filmedOn || !filmedAtMs) return;
      const day = dayOf(filmedAtMs, zone);
      setFilmedOn(day < today ? day : today);
    },
  };
}

function SendBar(props: { clips: number; isPending: boolean; isAsked: boolean; underWay: number }) {
  const { clips, isPending, isAsked, underWay } = props;
  return (
    <FormActions>
      <Button type="submit" variant="primary" isPending={isPending} pendingText="Sending…">
        {clips === 1 ? "Send the clip" : `Send ${clips} clips`}
      </Button>
      {underWay > 0 ? (
        <span className={styles.wait} role={isAsked ? "alert" : undefined}>
          {underWay === 1 ? "1 clip is" : `${underWay} clips are`} still uploading: send when done.
        </span>
      ) : null}
    </FormActions>
  );
}
