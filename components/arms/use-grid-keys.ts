"use client";
import { type FocusEvent, type KeyboardEvent, useCallback, useRef } from "react";
import { type GridPlace, type GridSize, placeAfterKey } from "./grid-moves";

/** Marks what can be focused in a grid by its place, "row:column". */
export const PLACE_ATTRIBUTE = "data-place";

/** What can be focused at or around a target, with its place; null outside the cells. */
export function cellOf(target: EventTarget): (GridPlace & { element: HTMLElement }) | null {
  const element = target instanceof Element ? target.closest<HTMLElement>(`[${PLACE_ATTRIBUTE}]`) : null;
  const [row, column] = (element?.getAttribute(PLACE_ATTRIBUTE) ?? "").split(":").map(Number);
  return element && row !== undefined && column !== undefined ? { element, row, column } : null;
}

/**
 * The keys of a grid whose cells carry {@link PLACE_ATTRIBUTE}. The tab stop goes along with the focus on the elements
 * themselves: thousands of cells are not drawn anew for a step. Enter and Space on a day are a click; a name is a link.
 */
export function useGridKeys(size: GridSize) {
  const stop = useRef<HTMLElement | null>(null);
  const { rows, columns } = size;

  const onKeyDown = useCallback(
    (event: KeyboardEvent<HTMLElement>) => {
      const from = cellOf(event.target);
      if (!from || event.altKey || event.shiftKey) return;
      if (from.column > 0 && (event.key === "Enter" || event.key === " ")) {
        event.preventDefault();
        from.element.click();
        return;
      }
      const to = placeAfterKey(from, event.key, event.ctrlKey || event.metaKey, { rows, columns });
      if (!to) return;
      event.preventDefault();
      event.currentTarget
        .querySelector<HTMLElement>(`[${PLACE_ATTRIBUTE}="${to.row}:${to.column}"]`)
        ?.focus();
    },
    [rows, columns],
  );

  const onFocus = useCallback((event: FocusEvent<HTMLElement>) => {
    const cell = cellOf(event.target);
    if (!cell) return;
    const before = stop.current ?? event.currentTarget.querySelector<HTMLElement>('[tabindex="0"]');
    if (before) before.tabIndex = -1;
    cell.element.tabIndex = 0;
    stop.current = cell.element;
  }, []);

  return { onKeyDown, onFocus };
}
