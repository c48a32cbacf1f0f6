"use client";
import type { PointerEvent } from "react";
import type { StageGeometry } from "@/components/clips/stage";
import { joinClasses } from "@/components/ui/join-classes";
import type { Place } from "@/server/domain/reviews/draft";
import { Magnifier } from "./magnifier";
import styles from "./measures.module.css";
import { isAllPlaced } from "./placing";
import { pointInWords } from "./placing-words";
import { ARM_PX, PointCross } from "./point-cross";
import { pointNear } from "./stage-places";
import type { PointsInHand } from "./use-points-in-hand";

/** How near a placed point a press takes hold of it, on the screen; a finger is broader. Common practice, no source. */
const REACH_PX = { fine: 9, finger: 18 };

/** What a {@link PointsOverlay} takes. */
export interface PointsOverlayProps {
  hand: PointsInHand;
  stage: StageGeometry;
}

/** The points in hand on the picture, which takes the presses that place them: children of the stage's `svg`. */
export function PointsOverlay({ hand, stage }: PointsOverlayProps) {
  if (stage.pxPerSource === 0) return null;
  const { placing, held, player } = hand;
  const frame = player.inHand;
  const selected = placing.selected === null ? undefined : placing.placed[placing.selected];
  const fine = hand.isFine && selected?.frame === frame ? selected : null;
  const enlarged: Place | null = held?.at ?? placing.cross ?? fine;
  const placeOf = (event: PointerEvent) => stage.toSource(event.clientX, event.clientY);

  const down = (event: PointerEvent<SVGRectElement>) => {
    if (event.button !== 0 || !event.isPrimary) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const at = placeOf(event);
    const reach = event.pointerType === "mouse" ? REACH_PX.fine : REACH_PX.finger;
    // While points are still to come every press places one: a sole lies close under its ankle.
    const near = isAllPlaced(placing)
      ? pointNear(placing.placed, frame, at, reach / stage.pxPerSource)
      : null;
    hand.hold(near, at);
  };

  return (
    <>
      <rect
        className={styles.surface}
        width={stage.widthPx}
        height={stage.heightPx}
        onPointerDown={down}
        onPointerMove={(event) => held && hand.moveHeld(placeOf(event))}
        onPointerUp={hand.letGo}
        onPointerCancel={hand.drop}
        data-points=""
      />
      {placing.placed.map((point, index) =>
        point.frame === frame ? (
          <PlacedPoint
            // biome-ignore lint/suspicious/noArrayIndexKey: points keep their order
            key={index}
            at={held?.index === index ? held.at : point}
            words={pointInWords(placing.asked[index]?.name ?? "point", point)}
            isSelected={placing.selected === index}
            stage={stage}
            onSelect={() => hand.select(index)}
          />
        ) : null,
      )}
      {held?.index === null ? <PointCross at={held.at} stage={stage} /> : null}
      {placing.cross ? <PointCross at={placing.cross} stage={stage} /> : null}
      {enlarged ? <Magnifier player={player} stage={stage} at={enlarged} /> : null}
    </>
  );
}

interface PlacedPointProps {
  at: Place;
  words: string;
  isSelected: boolean;
  stage: StageGeometry;
  onSelect: () => void;
}

/** A placed point; with the focus on it the arrow keys move it. */
function PlacedPoint({ at, words, isSelected, stage, onSelect }: PlacedPointProps) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: an svg has no button
    <g
      className={styles.point}
      role="button"
      tabIndex={0}
      aria-label={words}
      aria-pressed={isSelected}
      onFocus={onSelect}
      data-point=""
    >
      <PointCross at={at} stage={stage} />
      <circle
        className={joinClasses(styles.ring, isSelected && styles.selected)}
        cx={at.x}
        cy={at.y}
        r={ARM_PX / stage.pxPerSource}
      />
    </g>
  );
}
