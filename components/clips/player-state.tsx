"use client";
import { useRouter } from "next/navigation";
import { type ReactNode, useEffect, useState } from "react";
import { Button } from "@/components/ui/button";
import { ProgressBar } from "@/components/ui/progress-bar";
import type { ConversionState } from "@/server/domain/clips/clip";
import { HOW_TO_SEND_OTHERWISE } from "@/server/domain/clips/conversion";
import { dayInWords } from "@/server/domain/time/words";
import { clipCopyAddress } from "./played-clip";
import styles from "./player.module.css";
import type { ClipPlayer } from "./use-clip-player";

/** A film that is not there after this long is slow, and the way to try again is shown. */
const SLOW_MS = 10_000;

/** How often a page asks whether a clip has been drawn or copied by now. */
const ASK_MS = 4000;

/** What a {@link PlayerState} takes. */
export interface PlayerStateProps {
  player: ClipPlayer;
  hasFilm: boolean;
  facts: FilmFacts;
}

/** What is known of a film apart from its picture. */
export interface FilmFacts {
  /** The last day the film is kept. */
  retainUntil: string;
  /** How far the demo's clips are drawn. */
  drawing: { ready: number; drawing: number };
  /** Where the copy stands that every browser draws; null where none is needed. */
  conversion: ConversionState | null;
  /** How much of that copy is made, 0 to 1. */
  conversionShare: number | null;
}

/** What a player is told of a clip's film. */
export function filmFacts(
  clip: Pick<FilmFacts, "retainUntil" | "conversion" | "conversionShare">,
  drawing: FilmFacts["drawing"],
): FilmFacts {
  const { retainUntil, conversion, conversionShare } = clip;
  return { retainUntil, conversion, conversionShare, drawing };
}

/** Why there is no picture yet, or none at all, in place of the picture. */
export function PlayerState({ player, hasFilm, facts }: PlayerStateProps) {
  const { clip, picture } = player;
  useCopyOnceMade(player, facts.conversion);
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
  if (picture === "undecodable") return <Undecodable {...facts} />;
  if (picture === "damaged") {
    return (
      <Words title="The film is damaged" action={<Button onPress={player.retry}>Back to its start</Button>}>
        Some of its pictures cannot be drawn in any browser. The rest can still be watched; for a whole one it
        has to be sent again from the phone that filmed it.
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

/** Asks for the copy once it is there. */
function useCopyOnceMade({ clip, video, picture }: ClipPlayer, conversion: ConversionState | null) {
  useEffect(() => {
    const address = clipCopyAddress(clip.id);
    const isOver = conversion !== "made" || picture !== "undecodable" || video?.src.endsWith(address);
    if (video && !isOver) video.src = address;
  }, [clip.id, video, picture, conversion]);
}

function useAskAgain() {
  const router = useRouter();
  useEffect(() => {
    const timer = setInterval(() => router.refresh(), ASK_MS);
    return () => clearInterval(timer);
  }, [router]);
}

function Undecodable({ conversion, conversionShare }: FilmFacts) {
  if (conversion === "waiting" || conversion === "running") return <Copying share={conversionShare ?? 0} />;
  if (conversion === "no_program" || conversion === "failed") {
    return (
      <Words title="This browser cannot draw this film">
        The clip is kept and plays on the phone that filmed it. {HOW_TO_SEND_OTHERWISE}
      </Words>
    );
  }
  return (
    <Words title="This browser cannot draw this film">
      The film itself is whole. Open this page in another browser, or on the phone that filmed it.
    </Words>
  );
}

function Copying({ share }: { share: number }) {
  useAskAgain();
  const percent = Math.floor(share * 100);
  return (
    <Words title="This browser cannot draw this film yet">
      <p>A copy that every browser draws is being made.</p>
      <ProgressBar
        label="Copy"
        value={percent}
        max={100}
        words={
          share === 0
            ? "next in line; it appears here by itself"
            : `${percent} % made; it appears here by itself`
        }
      />
    </Words>
  );
}

function Drawing({ ready, drawing }: FilmFacts["drawing"]) {
  useAskAgain();
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
