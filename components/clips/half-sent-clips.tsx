"use client";

import { useEffect, useState } from "react";
import { Button } from "@/components/ui/button";
import { Notice } from "@/components/ui/notice";
import { momentInWords } from "@/server/domain/time/words";
import { forgetHalfSent, type HalfSent, halfSentUploads } from "./resumable-upload";
import styles from "./send-clips.module.css";

/** What a {@link HalfSentClips} takes. */
export interface HalfSentClipsProps {
  athleteId: string;
  zone: string;
  /** Sizes of the files in hand now: what is being gone on with is not half sent. */
  inHand: readonly number[];
}

/** Clips this phone began to send before the page was closed: chosen again, they go on where they stopped. */
export function HalfSentClips({ athleteId, zone, inHand }: HalfSentClipsProps) {
  const [found, setFound] = useState<HalfSent[]>([]);
  useEffect(() => {
    void halfSentUploads(athleteId).then(setFound);
  }, [athleteId]);
  const left = found.filter((upload) => !inHand.includes(upload.byteCount));
  if (left.length === 0) return null;
  function forget(upload: HalfSent) {
    setFound((all) => all.filter((each) => each.key !== upload.key));
    void forgetHalfSent(upload);
  }
  return (
    <Notice kind="attention" word="Half sent" isStatic className={styles.apart ?? ""}>
      <p>Choose the same file again: it goes on where it stopped.</p>
      <ul>
        {left.map((upload) => (
          <li key={upload.key}>
            {Math.max(1, Math.round(upload.byteCount / 1_000_000))} MB, begun{" "}
            {momentInWords(upload.begunAtMs, zone)}{" "}
            <Button variant="link" isSmall onPress={() => forget(upload)}>
              Forget it
            </Button>
          </li>
        ))}
      </ul>
    </Notice>
  );
}
