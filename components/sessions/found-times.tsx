"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { EmptyState } from "@/components/ui/empty-state";
import { LinkButton } from "@/components/ui/link-button";
import { Notice } from "@/components/ui/notice";
import { Section } from "@/components/ui/section";
import type { Answers } from "@/components/wire/answers";
import { addDays } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { BookDialog, type BookDialogProps } from "./book-dialog";
import styles from "./sessions.module.css";
import { type TimeSearch, timeSearchQuery } from "./time-search";

type Found = Answers["sessions"]["findTimes"];

/** What a {@link FoundTimes} takes. */
export interface FoundTimesProps extends Omit<BookDialogProps, "time" | "onClose"> {
  found: Found;
  /** The page's own address without its query. */
  href: string;
}

/** So many times are in sight before the rest is asked for: a screen of a phone. */
const FIRST_SHOWN = 8;

/** The times that fit, best first, each a sentence that can be taken; then the days an arm stops, and why. */
export function FoundTimes({ found, href, ...booking }: FoundTimesProps) {
  const [chosen, setChosen] = useState<Found["times"][number] | null>(null);
  const [shown, setShown] = useState(FIRST_SHOWN);
  const { search } = booking;
  const take = search.moveSessionId ? "Move here" : "Take it";
  return (
    <>
      {found.unreported.map((sentence) => (
        <Notice key={sentence} kind="attention" isStatic className={styles.notice ?? ""}>
          {sentence}
        </Notice>
      ))}
      <Section title="Times that fit" count={found.times.length} aside="best first">
        {found.times.length === 0 ? (
          <NoTime search={search} href={href} isPain={found.refused.some((span) => span.isPain)} />
        ) : (
          <ol className={styles.times}>
            {found.times.slice(0, shown).map((time) => (
              <li key={`${time.startsAtMs} ${time.coachPersonId} ${time.laneId}`} className={styles.time}>
                <span>
                  {time.sentence}
                  {time.isWished ? <small> as wished</small> : null}
                </span>
                <Button isSmall onPress={() => setChosen(time)} aria-label={`${take}: ${time.sentence}`}>
                  {take}
                </Button>
              </li>
            ))}
          </ol>
        )}
        {found.times.length > shown ? (
          <Button className={styles.more ?? ""} onPress={() => setShown(found.times.length)}>
            Show {found.times.length - shown} more
          </Button>
        ) : null}
      </Section>
      {found.refused.length > 0 ? <RefusedDays refused={found.refused} search={search} href={href} /> : null}
      {chosen ? <BookDialog {...booking} time={chosen} onClose={() => setChosen(null)} /> : null}
    </>
  );
}

function NoTime({ search, href, isPain }: { search: TimeSearch; href: string; isPain: boolean }) {
  if (isPain) {
    return (
      <EmptyState title="No mound throws for now">
        Pain stops all throwing until it is cleared, whatever the day.
      </EmptyState>
    );
  }
  const later = { ...search, fromDay: addDays(search.toDay, 1), toDay: addDays(search.toDay, 14) };
  return (
    <EmptyState
      title="No time fits all of that"
      action={<LinkButton href={`${href}?${timeSearchQuery(later)}`}>Look two weeks further</LinkButton>}
    >
      From {dayInWords(search.fromDay)} to {dayInWords(search.toDay)} coach, lane, athlete and arm are never
      free together. Ask for any coach, a shorter session or other days.
    </EmptyState>
  );
}

function RefusedDays({
  refused,
  search,
  href,
}: {
  refused: Found["refused"];
  search: TimeSearch;
  href: string;
}) {
  const [first] = refused;
  const freeDay = first && first.fromDay === search.fromDay ? first.firstFreeDay : null;
  const isPain = refused.some((span) => span.isPain);
  const dryWork = { ...search, kind: "dry_work", durationMin: 45, plannedPitches: 0 } as const;
  return (
    <Section title={isPain ? "Days without throwing" : "Days the arm rests"} count={refused.length}>
      <ul className={styles.refused}>
        {refused.map((span) => (
          <li key={span.fromDay}>{span.sentence}</li>
        ))}
      </ul>
      {freeDay ? (
        <p>
          First day free by the book: <strong>{dayInWords(freeDay, { long: true })}</strong>.
        </p>
      ) : null}
      {refused.some((span) => span.dryWorkFits) ? (
        <Notice
          isStatic
          title="A session without mound throws fits these days."
          actions={
            <LinkButton href={`${href}?${timeSearchQuery(dryWork)}`}>
              Find one without mound throws
            </LinkButton>
          }
        >
          Towel drill, dry mechanics, video in person.
        </Notice>
      ) : null}
    </Section>
  );
}
