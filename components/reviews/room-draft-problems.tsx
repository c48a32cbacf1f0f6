"use client";
import type { ReactNode } from "react";
import { Button } from "@/components/ui/button";
import { Notice } from "@/components/ui/notice";
import { clockInWords } from "@/server/domain/time/words";
import styles from "./room.module.css";
import type { DraftDocuments, RoomDraft } from "./use-room-draft";

/** What {@link RoomDraftProblems} takes. */
export interface RoomDraftProblemsProps<K extends keyof DraftDocuments> {
  draft: RoomDraft<K>;
  zone: string;
  /** A draft in a few lines, so that two can be told apart. */
  summary: (document: DraftDocuments[K]) => ReactNode;
}

/** What stands in the way of saving: a newer draft, both shown, or a round that is no longer this coach's. */
export function RoomDraftProblems<K extends keyof DraftDocuments>(props: RoomDraftProblemsProps<K>) {
  const { draft, zone, summary } = props;
  const { status, theirs, document } = draft;
  if (status.kind === "stopped") {
    return (
      <Notice kind="refusal" title="What you write is not saved any more">
        {status.sentence} Copy what you need from this page, then reload it.
      </Notice>
    );
  }
  if (status.kind !== "conflict") return null;
  return (
    <Notice
      kind="attention"
      title="A newer draft was saved elsewhere"
      actions={
        theirs ? (
          <>
            <Button isSmall onPress={draft.takeTheirs}>
              Go on with theirs
            </Button>
            <Button isSmall onPress={draft.keepMine}>
              Keep this one
            </Button>
          </>
        ) : null
      }
    >
      {theirs ? (
        <div className={styles.both}>
          <div>
            <b>
              Saved by {theirs.coachName} at {clockInWords(theirs.savedAtMs, zone)}
            </b>
            {summary(theirs.document)}
          </div>
          <div>
            <b>On this page, not saved</b>
            {summary(document)}
          </div>
        </div>
      ) : (
        "It is being fetched, so that you can choose. Nothing is lost meanwhile."
      )}
    </Notice>
  );
}
