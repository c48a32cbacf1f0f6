"use client";
import { useRouter } from "next/navigation";
import { type ReactNode, useEffect, useState } from "react";
import { Button } from "@/components/ui/button";
import { ProgressBar } from "@/components/ui/progress-bar";
import { dayInWords } from "@/server/domain/time/words";
import styles from "./player.module.css";
import type { ClipPlayer } from "./use-clip-player";

/** A film that is not there after this long is slow, and the way to try again is shown. */
const SLOW_MS = 10_000;

/** How often a page asks whether a demo clip has been drawn by now. */
const DRAWING_MS = 4000;

/** What a {@link PlayerState} takes. */
export interface PlayerStateProps {
  player: ClipPlayer;
  hasFilm: boolean;
  facts: {
    /** The last day the film is kept. */
    retainUntil: string;
    /** How far the demo's clips are drawn. */
    drawing: { ready: number; drawing: number };
  };
}

/** Why there is no picture yet, or none at all, in place of the picture. */
export function PlayerState({ player, hasFilm, facts }: PlayerStateProps) {
  const { clip, picture } = player;
  if (clip.state === "drawing") return <Drawing {...facts.drawing} />;
  if (clip.state === "expired") {
    return (
      <Words title="The film is no longer kept">
        It was kept until {dayInWords(facts.retainUntil, { withYear: true })}, the academy's time for films.
        What was written about it is kept.
      </Words>
    );
  }
  if (!hasFilm) return <Words title="There is no film here">It has not been sent with a round yet.</Words>;
  if (picture === "ready") return null;
  if (picture === "loading") return <Loading player={player} />;
  if (picture === "undecodable") {
    return (
      <Words title="This browser cannot draw this film">
        The film itself is whole. Open this page in another browser, or on the phone that filmed it.
      </Words>
    );
  }
  return (
    <Words title="The film did not come through" action={<Button onPress={player.retry}>Try again</Button>}>
      Check the connection. What you entered is still on this page.
    </Words>
  );
}

function Loading({ player }: { player: ClipPlayer }) {
  const [isSlow, setSlow] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setSlow(true), SLOW_MS);
    return () => clearTimeout(timer);
  }, []);
  if (!isSlow) return <p className={styles.loading}>Loading the film…</p>;
  return (
    <Words title="The film is slow to come" action={<Button onPress={player.retry}>Try again</Button>}>
      It is still loading. On a slow line a long clip can take a minute.
    </Words>
  );
}

function Drawing({ ready, drawing }: { ready: number; drawing: number }) {
  const router = useRouter();
  useEffect(() => {
    const timer = setInterval(() => router.refresh(), DRAWING_MS);
    return () => clearInterval(timer);
  }, [router]);
  return (
    <Words title="This demo clip is still being drawn">
      <ProgressBar
        label="Demo clips"
        value={ready}
        max={ready + drawing}
        words={`${ready} of ${ready + drawing} drawn; it appears here by itself`}
      />
    </Words>
  );
}

function Words({ title, children, action }: { title: string; children: ReactNode; action?: ReactNode }) {
  return (
    <div className={styles.words} role="status">
      <p className={styles.wordsTitle}>{title}</p>
      <div>{children}</div>
      {action}
    </div>
  );
}
