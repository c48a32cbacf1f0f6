"use client";

import { type KeyboardEvent, type RefObject, useCallback } from "react";

/** Marks the first control of a row; the keys move among these. */
export const ROW_CONTROL = "data-row-control";

const STEPS: Record<string, number> = { j: 1, ArrowDown: 1, k: -1, ArrowUp: -1 };
const OWN_KEYS =
  "input, textarea, [contenteditable], [role=menu], [role=listbox], [role=dialog], [aria-expanded=true]";

/**
 * Moves between the rows of a list by j and k or the arrows, while the focus is within it. From a control that is in no
 * row the first step goes to the first row.
 */
export function useRowKeys(list: RefObject<HTMLElement | null>) {
  return useCallback(
    (event: KeyboardEvent<HTMLElement>) => {
      const step = stepOf(event);
      if (step === 0 || !list.current || !isForRows(event.target, list.current)) return;
      const controls = [...list.current.querySelectorAll<HTMLElement>(`[${ROW_CONTROL}]`)];
      const row = event.target.closest("li");
      const at = controls.findIndex((control) => row?.contains(control) === true);
      const next = at === -1 ? controls.at(step > 0 ? 0 : -1) : controls[at + step];
      if (!next) return;
      event.preventDefault();
      next.focus();
    },
    [list],
  );
}

/** 1 down, -1 up, 0 for any other key or one that is held with another. */
function stepOf(event: KeyboardEvent): number {
  const isHeld = event.ctrlKey || event.metaKey || event.altKey || event.shiftKey;
  return isHeld ? 0 : (STEPS[event.key] ?? 0);
}

/** Not for fields, menus and dialogs, whose arrows are their own, nor for what a menu hangs on. */
function isForRows(target: EventTarget, list: HTMLElement): target is HTMLElement {
  return target instanceof HTMLElement && list.contains(target) && !target.closest(OWN_KEYS);
}
