"use client";
import Link from "next/link";
import { useRouter } from "next/navigation";
import type { MarkedFrames } from "@/components/clips/event-strip";
import { Player } from "@/components/clips/player";
import { filmFacts } from "@/components/clips/player-state";
import { useClipKeys } from "@/components/clips/use-clip-keys";
import { type ClipPair, useClipPair } from "@/components/clips/use-clip-pair";
import { type ClipPlayer, useClipPlayer } from "@/components/clips/use-clip-player";
import { EmptyState } from "@/components/ui/empty-state";
import { PageHeading } from "@/components/ui/page-heading";
import { RadioChoice } from "@/components/ui/radio-choice";
import { Section } from "@/components/ui/section";
import { SelectField } from "@/components/ui/select-field";
import type { CompareView } from "@/server/api/reviews/load-compare";
import type { ClipView } from "@/server/api/reviews/shapes";
import { dayInWords } from "@/server/domain/time/words";
import { clipFacts, clipName } from "./clip-words";
import { PairStrip } from "./pair-strip";
import styles from "./room.module.css";
import check from "./room-check.module.css";
import { CheckTogether } from "./room-check-parts";
import { marksOn } from "./room-edits";
import { markedBeside } from "./use-clip-in-hand";

/** A clip of a round beside any earlier one of the same view. */
export function Compare({ compare }: { compare: CompareView }) {
  const { athlete, roundId, newer, older } = compare;
  return (
    <>
      <PageHeading
        question="What changed?"
        place={
          <>
            <Link href={`/reviews/${roundId}`}>Review room</Link>
            {" / "}
            <Link href={`/athletes/${athlete.athleteId}`}>{athlete.name}</Link>, {athlete.ageYears}, throws{" "}
            {athlete.throws}-handed
          </>
        }
      />
      {newer && older ? (
        <Both key={`${newer.id} ${older.id}`} compare={compare} newer={newer} older={older} />
      ) : (
        <>
          {newer ? <Choices compare={compare} newer={newer} older={older} /> : null}
          <EmptyState title="There is nothing to compare with">
            {newer
              ? "No earlier clip of this view has its film. Clips are kept for the academy's time for films."
              : "The clip that came could not be used, and no other has come yet."}
          </EmptyState>
        </>
      )}
    </>
  );
}

interface BothProps {
  compare: CompareView;
  newer: ClipView;
  older: ClipView;
}

function Both({ compare, newer, older }: BothProps) {
  const oldPlayer = useClipPlayer(older);
  const newPlayer = useClipPlayer(newer);
  const pair = useClipPair(oldPlayer, newPlayer);
  const oldMarks = marksOn(older.id, compare.eventMarks, []);
  const newMarks = marksOn(newer.id, compare.eventMarks, []);
  useClipKeys({
    player: pair.newer,
    marks: newMarks,
    toMark: (direction) => {
      const frame = markedBeside(newMarks, newPlayer.wanted, direction);
      if (frame !== undefined) pair.newer.show(frame);
    },
  });
  return (
    <>
      <Choices compare={compare} newer={newer} older={older} />
      <div className={check.clips}>
        <Side
          word="Old"
          clip={older}
          pair={pair}
          player={pair.older}
          marks={oldMarks}
          drawing={compare.drawing}
        />
        <Side
          word="New"
          clip={newer}
          pair={pair}
          player={pair.newer}
          marks={newMarks}
          drawing={compare.drawing}
        />
      </div>
      <CheckTogether pair={pair} />
      <Section
        title="Moments, old above new"
        aside={
          Object.keys(newMarks).length > 0
            ? "a pair opens both clips on it"
            : "mark those of the new clip in the review room first"
        }
      >
        <PairStrip
          pair={pair}
          older={{ player: oldPlayer, marks: oldMarks }}
          newer={{ player: newPlayer, marks: newMarks }}
          corrections={compare.corrections}
        />
      </Section>
    </>
  );
}

function Choices({
  compare,
  newer,
  older,
}: {
  compare: CompareView;
  newer: ClipView;
  older: ClipView | null;
}) {
  const router = useRouter();
  const go = (clipId: string, withClipId?: string) =>
    router.replace(
      `/reviews/${compare.roundId}/compare?clip=${clipId}${withClipId ? `&with=${withClipId}` : ""}`,
    );
  return (
    <div className={check.choices}>
      {compare.own.length > 1 ? (
        <RadioChoice
          label="New clip"
          options={compare.own.map((each) => ({ value: each.id, label: clipName(each, compare.own) }))}
          value={newer.id}
          onChange={(clipId) => go(clipId)}
        />
      ) : null}
      {older ? (
        <SelectField
          label="Compare with"
          options={compare.earlier.map((each) => ({
            value: each.id,
            label: `${each.filmedOn ? dayInWords(each.filmedOn, { withYear: true }) : "Day not said"}${each.part === "reply" ? ", a reply" : ""}`,
          }))}
          value={older.id}
          onChange={(clipId) => clipId && go(newer.id, clipId)}
        />
      ) : null}
    </div>
  );
}

interface SideProps {
  word: "Old" | "New";
  clip: ClipView;
  pair: ClipPair;
  player: ClipPlayer;
  marks: MarkedFrames;
  drawing: CompareView["drawing"];
}

function Side({ word, clip, player, marks, drawing }: SideProps) {
  const filmed = clip.filmedOn === null ? "" : `, ${dayInWords(clip.filmedOn)}`;
  return (
    <div className={check.side}>
      <span />
      <Player
        player={player}
        label={`${word}: ${clipName(clip).toLowerCase()}${filmed}`}
        isLabelShown
        isCompact
        state={filmFacts(clip, drawing)}
        marks={marks}
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
