"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import { apiClient } from "@/components/wire/api-client";
import type { ConversionState } from "@/server/domain/clips/clip";
import type { ClipItem } from "./clip-item";
import { posterFrame, putPoster } from "./poster-frame";
import { type ResumableUpload, resumableUpload, type UploadListener } from "./resumable-upload";

/** A clip that was uploaded before this page was opened, and not sent. */
export interface WaitingClip {
  clipId: string;
  byteCount: number;
  durationMs: number;
  hasPoster: boolean;
  conversion: ConversionState | null;
}

/** The clips of this page and what can be done to each. */
export interface ClipUploads {
  items: readonly ClipItem[];
  add: (files: readonly File[]) => void;
  hold: (key: string) => void;
  goOn: (key: string) => void;
  takeBack: (key: string) => void;
}

interface InHand {
  file: File;
  upload: Promise<ResumableUpload>;
  picture: Promise<Blob | null>;
}

const fromBefore = (clip: WaitingClip): ClipItem => ({
  key: clip.clipId,
  name: `Uploaded before, ${Math.max(1, Math.round(clip.durationMs / 1000))} s long`,
  byteCount: clip.byteCount,
  sentBytes: clip.byteCount,
  standing: "ready",
  sentence: "",
  clipId: clip.clipId,
  conversion: clip.conversion,
  pictureUrl: clip.hasPoster ? `/api/clips/${clip.clipId}/poster` : null,
});

/**
 * Sends the chosen files one after the other, each in pieces that survive a dropped connection, and gives each its still
 * picture. What was uploaded before stands among them, ready.
 */
export function useClipUploads(athleteId: string, waiting: readonly WaitingClip[]): ClipUploads {
  const [items, setItems] = useState<ClipItem[]>(() => waiting.map(fromBefore));
  const inHand = useRef(new Map<string, InHand>());

  const change = useCallback((key: string, changes: Partial<ClipItem>) => {
    setItems((all) => changed(all, key, changes));
  }, []);

  const add = useCallback(
    (files: readonly File[]) => {
      for (const file of files) {
        const key = crypto.randomUUID();
        setItems((all) => [...all, newItem(key, file)]);
        const listener = listenerFor(file, athleteId, (changes) => change(key, changes));
        const picture = pictureOf(file);
        inHand.current.set(key, { file, picture, upload: resumableUpload(file, athleteId, listener) });
        void picture.then((drawn) => drawn && change(key, { pictureUrl: URL.createObjectURL(drawn) }));
      }
    },
    [athleteId, change],
  );

  const goOn = useCallback((key: string) => change(key, { standing: "in_line" }), [change]);
  const hold = useCallback(
    (key: string) => {
      change(key, { standing: "held" });
      void inHand.current.get(key)?.upload.then((upload) => upload.pause());
    },
    [change],
  );
  const takeBack = useCallback(
    (key: string) => {
      const item = items.find((each) => each.key === key);
      setItems((all) => all.filter((each) => each.key !== key));
      void giveUp(item, inHand.current.get(key));
      inHand.current.delete(key);
    },
    [items],
  );

  useInTurn(items, inHand.current, change);
  usePictures(items, inHand.current);
  useReturn(items, goOn);
  return { items, add, hold, goOn, takeBack };
}

/** A clip that turns out to stand here already (its first answer was lost) stands here once. */
function changed(all: ClipItem[], key: string, changes: Partial<ClipItem>): ClipItem[] {
  const isTwice = changes.clipId && all.some((item) => item.key !== key && item.clipId === changes.clipId);
  if (isTwice) return all.filter((item) => item.key !== key);
  return all.map((item) => (item.key === key ? { ...item, ...changes } : item));
}

const newItem = (key: string, file: File): ClipItem => ({
  key,
  name: file.name,
  byteCount: file.size,
  sentBytes: 0,
  standing: "in_line",
  sentence: "",
  clipId: null,
  conversion: null,
  pictureUrl: null,
});

async function pictureOf(file: File): Promise<Blob | null> {
  const url = URL.createObjectURL(file);
  const picture = await posterFrame(url);
  URL.revokeObjectURL(url);
  return picture;
}

function listenerFor(
  file: File,
  athleteId: string,
  change: (changes: Partial<ClipItem>) => void,
): UploadListener {
  return {
    onProgress: (sentBytes) =>
      change({ sentBytes, standing: sentBytes < file.size ? "sending" : "looked_at" }),
    onBroken: () => change({ standing: "broken" }),
    onStopped: () => change({ standing: "stopped" }),
    onRefused: (sentence) => change({ standing: "refused", sentence }),
    onDone: async ({ uploadId, ...told }) => {
      const arrived = told.clipId ? told : await clipOf(athleteId, uploadId);
      change(arrived ? { ...arrived, standing: "ready" } : { standing: "refused", sentence: LOST });
    },
  };
}

const LOST = "The clip arrived, but its answer was lost. Nothing was sent. Choose it again.";

/** Finds the clip that an upload became when the answer that said so was lost. */
async function clipOf(
  athleteId: string,
  uploadId: string,
): Promise<Pick<ClipItem, "clipId" | "conversion"> | null> {
  const waiting = await apiClient.clips.waiting.query({ athleteId }).catch(() => []);
  const found = waiting.find((clip) => clip.uploadId === uploadId);
  return found ? { clipId: found.clipId, conversion: found.conversion } : null;
}

async function giveUp(item: ClipItem | undefined, hand: InHand | undefined): Promise<void> {
  if (item?.pictureUrl?.startsWith("blob:")) URL.revokeObjectURL(item.pictureUrl);
  if (item?.clipId) await apiClient.clips.discard.mutate({ clipId: item.clipId }).catch(() => undefined);
  else await (await hand?.upload)?.giveUp().catch(() => undefined);
}

/** One at a time: two at once on a phone's connection are each half as fast. */
function useInTurn(
  items: readonly ClipItem[],
  inHand: ReadonlyMap<string, InHand>,
  change: (key: string, changes: Partial<ClipItem>) => void,
) {
  const isBusy = items.some((item) => ["sending", "broken", "looked_at"].includes(item.standing));
  const nextKey = isBusy ? undefined : items.find((item) => item.standing === "in_line")?.key;
  useEffect(() => {
    const hand = nextKey ? inHand.get(nextKey) : undefined;
    if (!nextKey || !hand) return;
    change(nextKey, { standing: "sending" });
    void hand.upload.then((upload) => upload.start());
  }, [nextKey, inHand, change]);
}

/** Hands over each picture once its clip is in. */
function usePictures(items: readonly ClipItem[], inHand: ReadonlyMap<string, InHand>) {
  const handed = useRef(new Set<string>());
  useEffect(() => {
    for (const { key, clipId } of items) {
      const hand = inHand.get(key);
      if (!hand || !clipId || handed.current.has(key)) continue;
      handed.current.add(key);
      void hand.picture.then((picture) => picture && putPoster(clipId, picture));
    }
  }, [items, inHand]);
}

/** What stopped for want of a connection goes on when there is one again. */
function useReturn(items: readonly ClipItem[], goOn: (key: string) => void) {
  useEffect(() => {
    const goOnAll = () => {
      for (const item of items) if (item.standing === "stopped") goOn(item.key);
    };
    window.addEventListener("online", goOnAll);
    return () => window.removeEventListener("online", goOnAll);
  }, [items, goOn]);
}
