import { type RefObject, useLayoutEffect, useState } from "react";

/** What a drawing is taken for until it can be measured. */
const UNMEASURED_PX = 960;

/** How wide an element is drawn, in px; followed as it changes. */
export function useDrawnWidth(element: RefObject<Element | null>): number {
  const [widthPx, setWidthPx] = useState(UNMEASURED_PX);
  useLayoutEffect(() => {
    const { current } = element;
    if (current === null) return;
    const measure = () => setWidthPx(Math.max(1, Math.round(current.getBoundingClientRect().width)));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(current);
    return () => observer.disconnect();
  }, [element]);
  return widthPx;
}
