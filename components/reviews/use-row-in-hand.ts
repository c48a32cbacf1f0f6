"use client";
import { useEffect, useState } from "react";

/** The id of the part of the page in which a row of the slip is written. */
export const rowPlace = (rowId: string): string => `write-${rowId}`;

/** Takes a row of the slip in hand: once it is drawn it is in sight, and the words of its first field are marked, to be left or typed over. */
export function useRowInHand(): (rowId: string) => void {
  const [inHand, take] = useState<{ rowId: string } | null>(null);
  useEffect(() => {
    if (inHand === null) return;
    const place = document.getElementById(rowPlace(inHand.rowId));
    const field = place?.querySelector<HTMLTextAreaElement>("textarea");
    field?.focus({ preventScroll: true });
    field?.select();
    place?.scrollIntoView({ block: "nearest" });
  }, [inHand]);
  return (rowId) => take({ rowId });
}

/** Leaves a field for the clip, so that its keys work again. */
export function backToClip(): void {
  const figure = document.querySelector<HTMLElement>("figure[data-frame]");
  if (!figure) return;
  // A figure is no stop of the Tab key; it only holds the focus while the clip is in hand.
  figure.tabIndex = -1;
  figure.focus({ preventScroll: true });
}
