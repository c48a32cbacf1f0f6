import Link from "next/link";
import { EmptyState } from "@/components/ui/empty-state";
import { addDays, type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";
import { momentInWords, spanInWords, timeInWords } from "@/server/domain/time/words";
import { Grouped } from "./grouped";
import styles from "./owed-list.module.css";

/** A review or a check that is owed. */
export interface OwedReview {
  roundId: string;
  athleteName: string;
  part: "first" | "reply";
  isTaken: boolean;
  dueAtMs: number;
  isLate: boolean;
  zone: string;
  coachName: string | null;
  isMine: boolean;
}

/** How many are in sight; the others are a link away. */
const SHOWN = 8;

/** What is owed by when: one's own, what nobody has, what others have, each in the order it falls due. */
export function OwedList({ owed, nowMs }: { owed: readonly OwedReview[]; nowMs: number }) {
  if (owed.length === 0) {
    return (
      <EmptyState title="No review is owed">A clip that comes in stands here with its due time.</EmptyState>
    );
  }
  return (
    <>
      <Grouped rows={owed.slice(0, SHOWN)} groupOf={groupOf}>
        {(rows) => (
          <ul className={styles.list}>
            {rows.map((review) => (
              <li key={review.roundId}>
                <Link href={`/reviews/${review.roundId}`} className={styles.row}>
                  <span className={review.isLate ? styles.late : undefined}>{dueInWords(review, nowMs)}</span>
                  <span>
                    {review.athleteName}
                    <span className={styles.detail}>{detailOf(review)}</span>
                  </span>
                </Link>
              </li>
            ))}
          </ul>
        )}
      </Grouped>
      {owed.length > SHOWN ? (
        <p className={styles.more}>
          <Link href="/reviews">All {owed.length} in the order they are due</Link>
        </p>
      ) : null}
    </>
  );
}

function dueInWords({ dueAtMs, isLate, zone }: OwedReview, nowMs: number): string {
  if (isLate) return `late by ${spanInWords(nowMs - dueAtMs)}`;
  const today: CalendarDay = dayOf(nowMs, zone);
  const day = dayOf(dueAtMs, zone);
  if (day === today) return `due today ${timeInWords(dueAtMs, zone)}`;
  if (day === addDays(today, 1)) return `due tomorrow ${timeInWords(dueAtMs, zone)}`;
  return `due ${momentInWords(dueAtMs, zone)}`;
}

function groupOf({ isMine, coachName }: OwedReview): string {
  if (isMine) return "Yours";
  return coachName === null ? "Nobody has these yet" : "With other coaches";
}

function detailOf({ part, isTaken, isMine, coachName }: OwedReview): string {
  const what = part === "reply" ? "reply to check" : isTaken ? "first clip, begun" : "first clip";
  return isMine || coachName === null ? what : `${what}, ${coachName}`;
}
