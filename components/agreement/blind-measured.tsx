"use client";
import { filmFacts } from "@/components/clips/player-state";
import { BlindPlacer } from "@/components/measures/blind-placer";
import { Button } from "@/components/ui/button";
import { LinkButton } from "@/components/ui/link-button";
import type { NextView, RatedFrame } from "@/server/api/agreement/shapes";
import type { MeasureKind } from "@/server/domain/mechanics/measure-kind";
import { useRate } from "./use-rate";

/** What a {@link BlindMeasured} takes. */
export interface BlindMeasuredProps {
  item: RatedFrame;
  kind: MeasureKind;
  /** What the clip is called when it is read out. */
  label: string;
  drawing: NextView["drawing"];
}

/** One frame of a set on which the points of a measure are placed. */
export function BlindMeasured({ item, kind, label, drawing }: BlindMeasuredProps) {
  const rate = useRate(item.id);
  const { clip, frames } = item;
  return (
    <BlindPlacer
      {...{ clip, kind, label, frames, command: rate }}
      film={filmFacts({ ...clip, retainUntil: "" }, drawing)}
      keepText="Keep and go on"
      onKeep={(placed) => void rate.run({ kind: "placed", ...placed })}
    >
      {clip.state === "ready" ? (
        <Button isDisabled={rate.pending} onPress={() => void rate.run({ kind: "unseen" })}>
          Could not be seen
        </Button>
      ) : null}
      <LinkButton variant="link" href="/academy/agreement">
        Stop here
      </LinkButton>
    </BlindPlacer>
  );
}
