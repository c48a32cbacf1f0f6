"use client";
import Link from "next/link";
import { useEffect, useRef } from "react";
import { onFrame } from "@/components/remeasure/remeasure-words";
import { LinkButton } from "@/components/ui/link-button";
import { Notice } from "@/components/ui/notice";
import { PageHeading } from "@/components/ui/page-heading";
import { ProgressBar } from "@/components/ui/progress-bar";
import type { NextView, RatedFrame } from "@/server/api/agreement/shapes";
import { EVENT_WORDS } from "@/server/domain/mechanics/delivery";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import styles from "./agreement.module.css";
import { BlindJudge } from "./blind-judge";
import { BlindMeasured } from "./blind-measured";

/** One coach rates the frames of a set alone, one after the other; it can be left and gone on with at any time. */
export function BlindScreen({ next }: { next: NextView }) {
  const { set, item, rated, of } = next;
  return (
    <div className={styles.blind}>
      <PageHeading
        question={questionOf(item)}
        place={
          <>
            <Link href="/academy/agreement">Coach agreement</Link>
            {" / "}
            <Link href={`/academy/agreement/${set.id}`}>{set.name}</Link>
          </>
        }
        detail={item ? <Asked item={item} /> : null}
      />
      <ProgressBar label="Rated" value={rated} max={of} words={`${rated} of ${of} frames`} />
      {item ? <Frame key={item.id} item={item} next={next} /> : <Over next={next} />}
    </div>
  );
}

function questionOf(item: RatedFrame | null): string {
  if (!item) return "Is anything left to rate?";
  if (item.kind === "judgement") return "How well does it show?";
  return `Where would you place ${item.kind === "finish_hold" ? "its end" : "the points"}?`;
}

function Asked({ item: { kind, checkpoint, view, frames } }: { item: RatedFrame }) {
  const at = `${EVENT_WORDS[checkpoint.event].toLowerCase()}, ${onFrame({ view, frame: frames.here })}`;
  const what = kind === "judgement" ? checkpoint.name : `${MEASURES[kind].words} for ${checkpoint.name}`;
  return (
    <>
      <b>{what}</b>, at {at}. Whose it is, and what anybody said, is not shown.
    </>
  );
}

function Frame({ item, next }: { item: RatedFrame; next: NextView }) {
  const section = useRef<HTMLElement>(null);
  /* Once a frame is kept the button that kept it is gone; whoever uses keys or hears the page goes on from the next. */
  useEffect(() => {
    if (document.activeElement === document.body) section.current?.focus();
  }, []);
  const label = `Frame ${next.rated + 1} of ${next.of}`;
  return (
    <section ref={section} tabIndex={-1} className={styles.frame} aria-label={label}>
      {item.kind === "judgement" ? (
        <BlindJudge item={item} label={label} drawing={next.drawing} />
      ) : (
        <BlindMeasured item={item} kind={item.kind} label={label} drawing={next.drawing} />
      )}
    </section>
  );
}

function Over({ next: { set, rated, of, gone } }: { next: NextView }) {
  const href = `/academy/agreement/${set.id}`;
  if (set.isClosed) {
    return (
      <Notice
        isStatic
        title="This set is closed"
        actions={
          <LinkButton isSmall variant="primary" href={href}>
            See how far you agree
          </LinkButton>
        }
      >
        Nobody rates in it any more. You rated {rated} of {of} frames.
      </Notice>
    );
  }
  return (
    <Notice
      isStatic
      kind="held"
      title={gone === 0 ? `All ${of} frames are rated` : "You have rated what is there"}
      actions={
        <LinkButton isSmall variant="primary" href={href}>
          See who is how far
        </LinkButton>
      }
    >
      {gone === 0
        ? ""
        : `${gone === 1 ? "1 frame" : `${gone} frames`} cannot be shown any more: the film is gone or consent was withdrawn. `}
      What you and the others said is told once the set is closed.
    </Notice>
  );
}
