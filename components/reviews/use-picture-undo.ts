"use client";
import { useState } from "react";
import {
  afterChange,
  NOTHING_DONE,
  type OnPicture,
  type PictureChange,
  stepBack,
  stepOn,
  withChange,
} from "./room-marks-edits";

/** A draft, as far as the picture goes. */
export interface PictureDraft {
  document: OnPicture;
  change: (by: <Document extends OnPicture>(now: Document) => Document) => void;
}

/** Changes to the picture that can be undone. */
export interface PictureUndo {
  make: (change: PictureChange) => void;
  back: () => void;
  on: () => void;
  canBack: boolean;
  canOn: boolean;
}

/** What comes before the draft's own steps, and what follows one. */
export interface UndoWithin {
  /** Steps back within what is still being made. @returns false when there is nothing of the kind */
  back: () => boolean;
  on: () => boolean;
  after: (change: PictureChange) => void;
}

/** Keeps what was done to the picture since the room was opened. */
export function usePictureUndo(draft: PictureDraft, within: UndoWithin): PictureUndo {
  const [history, setHistory] = useState(NOTHING_DONE);
  const step = (way: typeof stepBack) => {
    const { change, history: next } = way(history);
    if (!change) return;
    setHistory(next);
    draft.change((now) => withChange(now, change));
    within.after(change);
  };
  return {
    make: (change) => {
      setHistory((now) => afterChange(now, change));
      draft.change((now) => withChange(now, change));
    },
    back: () => within.back() || step(stepBack),
    on: () => within.on() || step(stepOn),
    canBack: history.done.length > 0,
    canOn: history.undone.length > 0,
  };
}
