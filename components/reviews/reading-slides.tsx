"use client";
import { type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from "react";
import { Button } from "react-aria-components/Button";
import { Icon } from "@/components/ui/icons";
import styles from "./reading-slides.module.css";

/** A swipe has come to rest when nothing moved for this long. */
const STILL_MS = 120;

/** One of a row of slides. */
export interface Slide {
  id: string;
  /** What it is, in a few words; read out with its number. */
  name: string;
  content: ReactNode;
}

/** What {@link ReadingSlides} takes. */
export interface ReadingSlidesProps {
  /** What they all are, e.g. "Corrections". */
  label: string;
  slides: readonly Slide[];
  /** The one in sight, from 0. */
  current: number;
  onCurrent: (index: number) => void;
}

/** A row of which one is in sight: swiped by thumb, moved by its buttons, by the arrow keys while it is in hand. */
export function ReadingSlides({ label, slides, current, onCurrent }: ReadingSlidesProps) {
  const track = useRef<HTMLOListElement>(null);
  const heightPx = useHeightOf(track, current, slides.length);
  const hand = useSwipe(track, current, onCurrent);
  const go = (index: number) => {
    if (index >= 0 && index < slides.length) onCurrent(index);
  };
  const keys = (event: KeyboardEvent) => {
    const by = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    if (by === undefined || event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    go(current + by);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys are a second way to what its buttons do
    <div onKeyDown={keys}>
      {slides.length > 1 ? <Pager {...{ label, slides, current, go }} /> : null}
      <ol
        ref={track}
        className={styles.track}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is reached by the keyboard as well
        tabIndex={0}
        aria-label={label}
        {...hand}
        style={heightPx === null ? undefined : { blockSize: heightPx }}
      >
        {slides.map((slide, index) => (
          <li key={slide.id} className={styles.slide} inert={index !== current}>
            {slide.content}
          </li>
        ))}
      </ol>
    </div>
  );
}

interface PagerProps extends Pick<ReadingSlidesProps, "label" | "slides" | "current"> {
  go: (index: number) => void;
}

function Pager({ label, slides, current, go }: PagerProps) {
  return (
    <nav className={styles.pager} aria-label={label} data-print="no">
      <Button
        className={styles.way}
        isDisabled={current === 0}
        onPress={() => go(current - 1)}
        aria-label="The one before"
      >
        <Icon name="back" />
      </Button>
      <ul className={styles.places}>
        {slides.map(({ id, name }, index) => (
          <li key={id}>
            <Button
              className={styles.place}
              onPress={() => go(index)}
              aria-current={index === current ? "true" : undefined}
              aria-label={`${index + 1} of ${slides.length}: ${name}`}
            >
              {index + 1}
            </Button>
          </li>
        ))}
      </ul>
      <Button
        className={styles.way}
        isDisabled={current === slides.length - 1}
        onPress={() => go(current + 1)}
        aria-label="The next one"
      >
        <Icon name="forward" />
      </Button>
    </nav>
  );
}

/** Brings the current slide into sight when something else than a swipe chose it, and tells what a swipe came to rest on. */
function useSwipe(
  track: { readonly current: HTMLOListElement | null },
  current: number,
  onCurrent: (index: number) => void,
) {
  const still = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  /** True while the row goes where it was sent and no thumb is on it. */
  const isSent = useRef(false);
  const latest = useRef({ current, onCurrent });
  latest.current = { current, onCurrent };

  useEffect(() => {
    const row = track.current;
    if (!row || indexInSight(row) === current) return;
    isSent.current = true;
    goTo(row, current, matchMedia("(prefers-reduced-motion: reduce)").matches ? "instant" : "smooth");
  }, [track, current]);

  useEffect(() => {
    const row = track.current;
    if (!row) return;
    // A turned phone has other widths: the slide in sight stays the one in sight.
    const watcher = new ResizeObserver(() => goTo(row, latest.current.current, "instant"));
    watcher.observe(row, { box: "border-box" });
    return () => {
      watcher.disconnect();
      clearTimeout(still.current);
    };
  }, [track]);

  const rested = () => {
    const row = track.current;
    if (!row) return;
    const index = indexInSight(row);
    if (index === latest.current.current) isSent.current = false;
    else if (isSent.current) goTo(row, latest.current.current, "instant");
    else latest.current.onCurrent(index);
  };

  return {
    onScroll: () => {
      clearTimeout(still.current);
      still.current = setTimeout(rested, STILL_MS);
    },
    onTouchStart: () => {
      isSent.current = false;
    },
    onWheel: () => {
      isSent.current = false;
    },
  };
}

function goTo(row: HTMLElement, index: number, behavior: ScrollBehavior): void {
  row.scrollTo({ left: index * row.clientWidth, behavior });
}

const indexInSight = (row: HTMLElement): number => Math.round(row.scrollLeft / Math.max(1, row.clientWidth));

/** The row is as high as the slide in sight: the others may be longer. */
function useHeightOf(
  track: { readonly current: HTMLOListElement | null },
  current: number,
  count: number,
): number | null {
  const [heightPx, setHeight] = useState<number | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another number of slides is another slide in sight
  useEffect(() => {
    const slide = track.current?.children[current];
    if (!(slide instanceof HTMLElement)) return;
    const watcher = new ResizeObserver(() => setHeight(slide.offsetHeight));
    watcher.observe(slide);
    return () => watcher.disconnect();
  }, [track, current, count]);
  return heightPx;
}
