"use client";
import { useState } from "react";
import type { ClipPlayer } from "@/components/clips/use-clip-player";
import { keptPlace, middleInSight } from "@/components/measures/stage-places";
import { usePlacingKeys } from "@/components/measures/use-placing-keys";
import type { Place } from "@/server/domain/reviews/draft";
import { keptStroke } from "./stroke-points";

/** A pencil in hand: a stroke is drawn in one drag, or from corner to corner by presses or keys. */
export interface Pencil {
  player: ClipPlayer;
  /** The stroke under the pointer, or the corners so far. */
  points: readonly Place[];
  /** The cross that the keys move; null while they have none. */
  cross: Place | null;
  press: (at: Place) => void;
  /** @param step points nearer than this add nothing */
  draw: (at: Place, step: number) => void;
  /** @param step a stroke shorter than three of these was a press: it sets a corner */
  lift: (step: number) => void;
  drop: () => void;
  nudge: (x: number, y: number) => void;
  /** Sets a corner at the cross; where the last one lies there already, the stroke is done. */
  take: () => void;
  back: () => void;
  /** The corners are a stroke, as soon as there are two. */
  finish: (() => void) | undefined;
  leave: () => void;
}

/** What a pencil draws on, and what comes of it. */
export interface PencilUse {
  player: ClipPlayer;
  isOn: boolean;
  onStroke: (points: Place[]) => void;
  onLeave: () => void;
}

/** How many steps a press may move and still be one. Common practice, no source. */
const STILL_STEPS = 3;

/** Holds a pencil; null while it is put down. */
export function usePencil({ player, isOn, onStroke, onLeave }: PencilUse): Pencil | null {
  const [corners, setCorners] = useState<readonly Place[]>([]);
  const [stroke, setStroke] = useState<readonly Place[] | null>(null);
  const [cross, setCross] = useState<Place | null>(null);
  const { size } = player;
  const done = (points: readonly Place[], step: number) => {
    setCorners([]);
    onStroke(keptStroke(points, step));
  };
  const corner = (at: Place) => setCorners((now) => [...now, at]);
  const pencil: Pencil | null = isOn
    ? {
        player,
        cross,
        points: stroke && stroke.length > 1 ? stroke : corners,
        press: (at) => {
          player.pause();
          setStroke([keptPlace(at, size)]);
        },
        draw: (at, step) => setStroke((now) => now && farther(now, keptPlace(at, size), step)),
        lift: (step) => {
          const [first, ...more] = stroke ?? [];
          setStroke(null);
          if (!first) return;
          const isPress = !more.some((point) => away(first, point) > STILL_STEPS * step);
          if (isPress) corner(first);
          else done([first, ...more], step);
        },
        drop: () => setStroke(null),
        nudge: (x, y) =>
          setCross((now) => {
            const from = now ?? corners.at(-1) ?? middleInSight(player);
            return keptPlace({ x: from.x + x, y: from.y + y }, size);
          }),
        take: () => {
          if (isStrokeDone(corners, cross)) done(corners, 0);
          else if (cross) corner(cross);
          else setCross(corners.at(-1) ?? middleInSight(player));
        },
        back: () => setCorners((now) => now.slice(0, -1)),
        finish: corners.length > 1 ? () => done(corners, 0) : undefined,
        leave: () => {
          setCorners([]);
          setCross(null);
          onLeave();
        },
      }
    : null;
  usePlacingKeys(pencil && { ...pencil, isMirrored: player.view.isMirrored });
  return pencil;
}

/** Whether taking once more ends the stroke: nothing was moved since its last corner. */
function isStrokeDone(corners: readonly Place[], cross: Place | null): boolean {
  const last = corners.at(-1);
  return corners.length > 1 && last !== undefined && (cross === null || away(last, cross) === 0);
}

const away = (a: Place, b: Place) => Math.hypot(b.x - a.x, b.y - a.y);

function farther(stroke: readonly Place[], at: Place, step: number): readonly Place[] {
  const last = stroke.at(-1);
  return last && away(last, at) < step ? stroke : [...stroke, at];
}
