"use client";
import { type ReactNode, useEffect, useRef, useState } from "react";
import { clipPosterAddress, clipVideoAddress } from "./played-clip";
import { placeInPicture } from "./stage/picture-place";
import styles from "./stage/stage.module.css";
import { viewTransform } from "./stage/stage-view";
import { useTold } from "./stage/told-place";
import { useStageHand } from "./stage/use-stage-hand";
import type { ClipPlayer } from "./use-clip-player";

/** How the picture lies on the screen now, for what is drawn over it. */
export interface StageGeometry {
  /** The upright picture in its own pixels: what the overlay's coordinates are. */
  widthPx: number;
  heightPx: number;
  zoom: number;
  isMirrored: boolean;
  /** The place in the picture under a place on the screen, in the picture's own pixels; true at every zoom. */
  toSource: (clientX: number, clientY: number) => { x: number; y: number };
  /** How many pixels of the screen one of the picture takes now. */
  pxPerSource: number;
}

/** What a {@link Stage} takes. */
export interface StageProps {
  player: ClipPlayer;
  /** Children of one `svg` whose coordinates are the picture's own pixels; it goes along with zoom, pan and mirror. */
  overlay?: ((stage: StageGeometry) => ReactNode) | undefined;
  /** Presses are for the overlay: they neither play nor shift. Wheel, two fingers and keys still enlarge. */
  isHandTaken?: boolean | undefined;
  /** What lies over the whole stage, such as words in place of the picture. */
  children?: ReactNode;
}

/** The picture of a clip, which can be enlarged, shifted and mirrored, and what is drawn over it. */
export function Stage({ player, overlay, isHandTaken = false, children }: StageProps) {
  const { size, view, look, toggle } = player;
  const stage = useRef<HTMLDivElement>(null);
  const picture = useRef<HTMLDivElement>(null);
  const widthOnScreen = useWidth(picture);
  useStageHand(stage, picture, { look, onPress: toggle, isHandTaken, isEnlarged: view.zoom > 1 });

  const geometry: StageGeometry = {
    ...size,
    zoom: view.zoom,
    isMirrored: view.isMirrored,
    pxPerSource: (widthOnScreen * view.zoom) / size.widthPx,
    toSource: (clientX, clientY) => {
      const box = picture.current?.getBoundingClientRect() ?? { left: 0, top: 0, width: 0, height: 0 };
      return placeInPicture(box, size, view.isMirrored, clientX, clientY);
    },
  };
  return (
    <div
      ref={stage}
      className={styles.stage}
      data-enlarged={view.zoom > 1 || undefined}
      data-hand-taken={isHandTaken || undefined}
      style={{ "--ratio": size.widthPx / size.heightPx } as React.CSSProperties}
    >
      <div ref={picture} className={styles.picture} style={{ transform: viewTransform(view) }}>
        <Pictures player={player} />
        {overlay ? (
          <svg
            className={styles.overlay}
            viewBox={`0 0 ${size.widthPx} ${size.heightPx}`}
            data-overlay=""
            role="presentation"
          >
            {overlay(geometry)}
          </svg>
        ) : null}
      </div>
      {children}
    </div>
  );
}

/** The film and the canvas over it; the one that is seen follows the picture at once. */
function Pictures({ player: { clip, attach, canvas, told } }: { player: ClipPlayer }) {
  const shownBy = useTold(told, (place) => place.shownBy);
  return (
    <>
      <video
        key={clip.id}
        ref={attach}
        className={styles.film}
        src={clipVideoAddress(clip.id)}
        poster={clip.hasPoster ? clipPosterAddress(clip.id) : undefined}
        preload="auto"
        muted
        playsInline
        disablePictureInPicture
        data-shown={shownBy === "film" ? "" : undefined}
      />
      <canvas
        ref={canvas}
        className={styles.held}
        hidden={shownBy === "film"}
        data-shown={shownBy === "canvas" ? "" : undefined}
      />
    </>
  );
}

/** The width an element takes on the page, whatever it is enlarged by. */
function useWidth(element: React.RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(0);
  useEffect(() => {
    const of = element.current;
    if (!of) return;
    const watch = new ResizeObserver(() => setWidth(of.offsetWidth));
    watch.observe(of);
    return () => watch.disconnect();
  }, [element]);
  return width;
}
