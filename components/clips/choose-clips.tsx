"use client";

import { FileTrigger } from "react-aria-components/FileTrigger";
import { Button } from "@/components/ui/button";
import styles from "./send-clips.module.css";

/** What a {@link ChooseClips} takes. */
export interface ChooseClipsProps {
  /** How many more may be chosen. */
  left: number;
  isFirst: boolean;
  maxMinutes: number;
  onChoose: (files: File[]) => void;
}

/** Where clips are chosen: several at once, from the phone's own films or straight from its camera. */
export function ChooseClips({ left, isFirst, maxMinutes, onChoose }: ChooseClipsProps) {
  return (
    <div className={styles.choose}>
      <FileTrigger
        acceptedFileTypes={["video/*", ".mp4", ".mov", ".m4v", ".webm", ".mkv"]}
        allowsMultiple
        onSelect={(files) => onChoose([...(files ?? [])].slice(0, left))}
      >
        <Button variant={isFirst ? "primary" : "quiet"} isDisabled={left === 0}>
          {isFirst ? "Choose clips" : "Add another view"}
        </Button>
      </FileTrigger>
      <p className={styles.limits}>
        {left === 0
          ? "That is the most for one round."
          : `Up to ${left}${isFirst ? "" : " more"} of one day, each ${maxMinutes} min and 1 GB at most. They start uploading at once and are seen by nobody until you send them.`}
      </p>
    </div>
  );
}
