"use client";
import Link from "next/link";
import { FrameImage } from "@/components/clips/frame-image";
import { useThumbnails } from "@/components/clips/use-thumbnails";
import { roomAddress } from "@/components/reviews/room-address";
import { dayInWords } from "@/server/domain/time/words";
import styles from "./evidence.module.css";
import type { SeriesView } from "./plot-days";

const WHICH_WORDS = { first: "First", middle: "Between", latest: "Latest" } as const;

/** The first, a middle and the latest frame of a series whose film is there; each opens the room on it. */
export function FramesToSee({ frames }: { frames: SeriesView["frames"] }) {
  if (frames.length === 0) {
    return (
      <p>No frame of this series has its film any more. Clips are kept for the academy’s time for films.</p>
    );
  }
  return (
    <ol className={styles.frames}>
      {frames.map((each) => (
        <li key={each.which}>
          <Frame {...each} />
        </li>
      ))}
    </ol>
  );
}

function Frame({ which, day, words, frame, roundId, clip }: SeriesView["frames"][number]) {
  const picture = useThumbnails(clip, [frame])(frame);
  return (
    <Link href={roomAddress({ roundId, clipId: clip.id, frame })} className={styles.frame}>
      <span className={styles.picture}>
        {picture ? <FrameImage address={picture} className={styles.image} /> : null}
      </span>
      <b>{WHICH_WORDS[which]}</b>
      <span>
        {dayInWords(day, { withYear: true })}, frame {frame + 1}
      </span>
      <span>{words}</span>
    </Link>
  );
}
