import { EmptyState } from "@/components/ui/empty-state";
import { PageHeading } from "@/components/ui/page-heading";
import { Pagination, rangeInWords } from "@/components/ui/pagination";
import { Legend } from "@/components/ui/state-mark";
import type { Answers } from "@/components/wire/answers";
import { dayInWords } from "@/server/domain/time/words";
import { ArmGrid } from "./arm-grid";
import { armsHref, type BoardPlace } from "./arms-address";
import styles from "./arms-board.module.css";
import { BoardFilters } from "./board-filters";

/** What an {@link ArmsBoard} takes. */
export interface ArmsBoardProps {
  board: Answers["arms"]["board"];
  place: BoardPlace;
  myPersonId: string;
}

/** Athletes by days, two weeks back and two ahead: whose arm is limited, and until when. */
export function ArmsBoard({ board, place, myPersonId }: ArmsBoardProps) {
  const { rows, page, pageSize, total } = board;
  return (
    <>
      <PageHeading
        place={dayInWords(board.today, { withYear: true })}
        question="Whose arm is limited, and until when?"
        detail={<Legend />}
      />
      <BoardFilters board={board} place={place} myPersonId={myPersonId} />
      <p className={styles.count} role="status">
        {rangeInWords(page, pageSize, total, total === 1 ? "arm" : "arms")}
      </p>
      {rows.length === 0 ? (
        <EmptyState title="No arm fits">Choose every coach, every team or every site above.</EmptyState>
      ) : (
        <ArmGrid
          key={armsHref(place)}
          rows={rows}
          fromDay={board.fromDay}
          dayCount={board.dayCount}
          today={board.today}
          firstRow={(page - 1) * pageSize}
          total={total}
        />
      )}
      <Pagination
        page={page}
        pageSize={pageSize}
        total={total}
        noun="arms"
        hrefFor={(to) => armsHref({ ...place, page: to })}
      />
      <p className={styles.caution}>
        By the book, given what is known here; what nobody reported is not in it.
      </p>
    </>
  );
}
