"use client";
import { useEffect, useReducer, useState } from "react";
import { apiClient } from "@/components/wire/api-client";
import { problemOf } from "@/components/wire/problem";
import {
  type CheckDraft,
  checkDraftSchema,
  type ReviewDraft,
  reviewDraftSchema,
} from "@/server/domain/reviews/draft";
import { DraftKeeper, type DraftStatus, type SaveOutcome } from "./room-draft-keeper";

/** What can be written, by its kind. */
export interface DraftDocuments {
  review: ReviewDraft;
  check: CheckDraft;
}
type Kind = keyof DraftDocuments;

/** A draft that was saved elsewhere. */
export interface TheirDraft<K extends Kind> {
  document: DraftDocuments[K];
  version: number;
  coachName: string;
  savedAtMs: number;
}

/** A draft in a screen's hands. */
export interface RoomDraft<K extends Kind> {
  document: DraftDocuments[K];
  /** Changes it by what it is now; saved by itself. */
  change: (by: (document: DraftDocuments[K]) => DraftDocuments[K]) => void;
  status: DraftStatus;
  /** Saves now. @returns the version on the server, or null when it could not be saved */
  flush: () => Promise<number | null>;
  /** The newer draft, once it has been fetched; null while there is none. */
  theirs: TheirDraft<K> | null;
  /** The server has said that there is a newer draft: it is fetched, and one of the two chosen. */
  overtaken: () => void;
  takeTheirs: () => void;
  keepMine: () => void;
}

/** Holds what a coach writes on a round and keeps it on the server as it is written. */
export function useRoomDraft<K extends Kind>(
  kind: K,
  roundId: string,
  kept: TheirDraft<K> | null,
  empty: DraftDocuments[K],
): RoomDraft<K> {
  const [keeper] = useState(
    () =>
      new DraftKeeper<DraftDocuments[K]>(
        kept?.document ?? empty,
        kept?.version ?? 0,
        kept?.savedAtMs ?? null,
        (document, version) => saveDraft(kind, roundId, document, version),
      ),
  );
  const [, redraw] = useReducer((count: number) => count + 1, 0);
  const [theirs, setTheirs] = useState<TheirDraft<K> | null>(null);
  const { status } = keeper;
  useEffect(() => keeper.listen(redraw), [keeper]);
  useLeaving(keeper);
  useCatchingUp(keeper, kind, roundId);

  useEffect(() => {
    if (status.kind !== "conflict") return setTheirs(null);
    let isOver = false;
    const fetchTheirs = async () => {
      const found = await theirDraft(kind, roundId).catch(() => null);
      if (isOver || !found) return;
      // A save whose answer was lost on the way comes back as a newer draft: it is this one.
      if (isSame(kind, found.document, keeper.document)) keeper.adopt(found);
      else if (isSame(kind, found.document, keeper.lastTried)) void keeper.overwrite(found.version);
      else setTheirs(found);
    };
    void fetchTheirs();
    return () => {
      isOver = true;
    };
  }, [status.kind, kind, roundId, keeper]);

  return {
    document: keeper.document,
    change: (by) => keeper.change(by(keeper.document)),
    status,
    flush: () => keeper.flush(),
    theirs,
    overtaken: keeper.overtaken,
    takeTheirs: () => {
      if (theirs) keeper.adopt(theirs);
    },
    keepMine: () => {
      if (theirs) void keeper.overwrite(theirs.version);
    },
  };
}

/** Saves what is not saved when the page is put aside, asks before it is left, and tries again once back on line. */
function useLeaving<Document>(keeper: DraftKeeper<Document>) {
  useEffect(() => {
    const hidden = () => {
      if (document.visibilityState === "hidden" && !keeper.isSaved) void keeper.flush();
    };
    const leaving = (event: BeforeUnloadEvent) => {
      if (!keeper.isSaved) event.preventDefault();
    };
    const online = () => keeper.retry();
    document.addEventListener("visibilitychange", hidden);
    window.addEventListener("beforeunload", leaving);
    window.addEventListener("online", online);
    return () => {
      document.removeEventListener("visibilitychange", hidden);
      window.removeEventListener("beforeunload", leaving);
      window.removeEventListener("online", online);
      if (!keeper.isSaved) void keeper.flush();
    };
  }, [keeper]);
}

/**
 * Asks for a newer draft when the screen opens and when it comes to the front: one that was on its way while the page was
 * loaded anew, or that was written on another device.
 */
function useCatchingUp<K extends Kind>(keeper: DraftKeeper<DraftDocuments[K]>, kind: K, roundId: string) {
  useEffect(() => {
    const ask = async () => {
      const found = await theirDraft(kind, roundId).catch(() => null);
      if (found) keeper.catchUp(found);
    };
    const shown = () => {
      if (document.visibilityState === "visible") void ask();
    };
    void ask();
    document.addEventListener("visibilitychange", shown);
    return () => document.removeEventListener("visibilitychange", shown);
  }, [keeper, kind, roundId]);
}

async function saveDraft<K extends Kind>(
  kind: K,
  roundId: string,
  document: DraftDocuments[K],
  version: number,
): Promise<SaveOutcome> {
  try {
    const input = { kind, roundId, document, version } as Parameters<
      typeof apiClient.reviews.saveDraft.mutate
    >[0];
    return { kind: "saved", ...(await apiClient.reviews.saveDraft.mutate(input)) };
  } catch (error) {
    const { refusal, sentence, fields } = problemOf(error);
    if (refusal?.reason === "changed_meanwhile") return { kind: "changed_meanwhile" };
    const isAnswered = refusal !== null || Object.keys(fields).length > 0;
    return isAnswered ? { kind: "refused", sentence } : { kind: "unreachable" };
  }
}

async function theirDraft<K extends Kind>(kind: K, roundId: string): Promise<TheirDraft<K> | null> {
  const room = await apiClient.reviews.room.query({ roundId });
  return (kind === "review" ? room.reviewDraft : room.checkDraft) as TheirDraft<K> | null;
}

const SCHEMAS = { review: reviewDraftSchema, check: checkDraftSchema };

/** Whether two drafts say the same, in whatever order their keys stand. */
function isSame(kind: Kind, one: unknown, other: unknown): boolean {
  const read = (document: unknown) => JSON.stringify(SCHEMAS[kind].safeParse(document).data ?? document);
  return read(one) === read(other);
}
