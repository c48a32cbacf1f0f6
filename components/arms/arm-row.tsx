// biome-ignore-all lint/a11y/noRedundantRoles: a browser drops the roles of a table whose rows become a grid on phones
// biome-ignore-all lint/a11y/noNoninteractiveElementToInteractiveRole: a table whose cells one moves among is a grid
"use client";
import Link from "next/link";
import { memo } from "react";
import { MarkShape } from "@/components/ui/state-mark";
import type { Answers } from "@/components/wire/answers";
import { decodeCells } from "@/server/domain/throwing/board-cell";
import { dayInWords } from "@/server/domain/time/words";
import styles from "./arm-grid.module.css";
import { type BoardDays, cellFace, cellInWords } from "./board-words";
import { PLACE_ATTRIBUTE } from "./use-grid-keys";

/** An arm as the board is told of it. */
export type BoardArm = Answers["arms"]["board"]["rows"][number];

/** What an {@link ArmRow} takes. */
export interface ArmRowProps {
  arm: BoardArm;
  days: BoardDays;
  /** The place among the rows drawn, from 0. */
  index: number;
  /** The place in the whole grid, the head included, from 1. */
  rowNumber: number;
}

/** One arm: the name with how it stands today, then its days. Drawn once; the focus moves without it. */
export const ArmRow = memo(function ArmRow({ arm, days, index, rowNumber }: ArmRowProps) {
  const cells = decodeCells(arm.cells);
  return (
    <tr role="row" aria-rowindex={rowNumber} className={styles.row}>
      <th role="rowheader" scope="row" aria-colindex={1} className={styles.name}>
        <Link
          href={`/athletes/${arm.athleteId}/throws`}
          className={styles.link}
          tabIndex={-1}
          prefetch={false}
          {...{ [PLACE_ATTRIBUTE]: `${index}:0` }}
        >
          {arm.name}
        </Link>
        <span className={styles.now}>{cellInWords(cells, days.today, days)}</span>
        {arm.unreportedSince ? (
          <span className={styles.silence}>
            <MarkShape kind="unreported" />
            nothing reported since {shortDay(arm.unreportedSince)}: ask
          </span>
        ) : null}
      </th>
      {cells.map((cell, at) => {
        const face = cellFace(cell, at < days.today);
        return (
          <td
            key={days.days[at]}
            role="gridcell"
            aria-colindex={at + 2}
            aria-label={cellInWords(cells, at, days)}
            tabIndex={index === 0 && at === days.today ? 0 : -1}
            className={at < days.today ? styles.past : styles.cell}
            data-today={at === days.today ? "" : undefined}
            {...{ [PLACE_ATTRIBUTE]: `${index}:${at + 1}` }}
          >
            <MarkShape kind={face.kind} count={face.count} />
            <span className={styles.word}>{face.word}</span>
            {face.more ? <span className={styles.more}>{face.more}</span> : null}
          </td>
        );
      })}
    </tr>
  );
});

/** "3 Nov": a day long enough ago that its weekday says nothing. */
function shortDay(day: string): string {
  return dayInWords(day).split(" ").slice(1).join(" ");
}
