"use client";
import { useState } from "react";
import { Notice } from "@/components/ui/notice";
import type { ClipView, CorrectionView, ReadingView } from "@/server/api/reviews/shapes";
import { asTheDeliveryRuns } from "@/server/domain/reviews/recap";
import { placesOf } from "./reading-places";
import { ReadingRound } from "./reading-round";
import { ReadingTogether } from "./reading-together";

/** What a {@link Reading} takes. */
export interface ReadingProps {
  reading: ReadingView;
  /** False for staff who look in. */
  mayTick: boolean;
}

/** A round as the family reads it: correction by correction on its frame, and old beside new once a reply is in. */
export function Reading({ reading, mayTick }: ReadingProps) {
  const [current, setCurrent] = useState(0);
  const [together, setTogether] = useState<string | null>(null);
  const corrections = inOrderOfReading(reading);
  const [first, ...others] = inOrderOfUse(reading);
  if (!first) return <Notice isStatic>There is no clip in this round any more.</Notice>;
  const compared = corrections.find((each) => each.id === together);
  const pair = compared ? placesOf(compared, reading).pair : null;
  if (compared && pair) {
    return (
      <ReadingTogether
        key={compared.id}
        correction={compared}
        pair={pair}
        reading={reading}
        onBack={() => setTogether(null)}
      />
    );
  }
  return (
    <ReadingRound
      clips={[first, ...others]}
      current={Math.min(current, Math.max(0, corrections.length - 1))}
      onCurrent={setCurrent}
      onTogether={(correction) => setTogether(correction.id)}
      {...{ reading, mayTick, corrections }}
    />
  );
}

/** What this round gave first, as the delivery runs; then what is carried over from before. */
function inOrderOfReading({ corrections, round }: ReadingView): CorrectionView[] {
  const isOwn = (each: CorrectionView) => each.roundId === round.id;
  return [
    ...asTheDeliveryRuns(corrections.filter(isOwn)),
    ...asTheDeliveryRuns(corrections.filter((each) => !isOwn(each))),
  ];
}

/** The round's own clips first; those of earlier rounds only while their film is kept. */
function inOrderOfUse({ clips, round }: ReadingView): ClipView[] {
  const own = clips.filter((clip) => clip.roundId === round.id);
  const earlier = clips.filter((clip) => clip.roundId !== round.id && clip.state !== "expired");
  return [...own, ...earlier];
}
