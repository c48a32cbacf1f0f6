// biome-ignore-all lint/a11y/noRedundantRoles: a browser drops the roles of a table whose rows become a grid on phones
// biome-ignore-all lint/a11y/noNoninteractiveElementToInteractiveRole: a table whose cells one moves among is a grid
"use client";
import {
  type CSSProperties,
  type FocusEvent,
  type MouseEvent,
  type PointerEvent,
  useEffect,
  useMemo,
  useRef,
  useState,
} from "react";
import type { Answers } from "@/components/wire/answers";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import styles from "./arm-grid.module.css";
import { ArmRow } from "./arm-row";
import { boardDays } from "./board-words";
import { type AskedCell, CellReasons } from "./cell-reasons";
import { GridHead } from "./grid-head";
import { cellOf, useGridKeys } from "./use-grid-keys";

/** What an {@link ArmGrid} takes. */
export interface ArmGridProps {
  rows: Answers["arms"]["board"]["rows"];
  fromDay: CalendarDay;
  dayCount: number;
  today: CalendarDay;
  /** How many arms of the whole board stand before the first of these, and how many there are in all. */
  firstRow: number;
  total: number;
}

/** How many days before today are in sight when the board opens, where it is wider than the screen. */
const DAYS_SHOWN_BEFORE = 2;

/**
 * Athletes down, days across, by the grid pattern: one stop for the Tab key, arrows from cell to cell, Enter asks why.
 * The cell in hand stands in words below. Cells are bare marks without handlers; the table listens for all of them.
 */
export function ArmGrid({ rows, fromDay, dayCount, today, firstRow, total }: ArmGridProps) {
  const frame = useRef<HTMLDivElement>(null);
  const days = useMemo(() => boardDays(fromDay, dayCount, today), [fromDay, dayCount, today]);
  const [asked, setAsked] = useState<AskedCell | null>(null);
  const [inHand, setInHand] = useState("");
  const { onKeyDown, onFocus } = useGridKeys({ rows: rows.length, columns: dayCount + 1 });

  useEffect(() => {
    const column = frame.current?.querySelector<HTMLElement>("[data-today]");
    const name = frame.current?.querySelector<HTMLElement>("[data-corner]");
    if (!frame.current || !column || !name) return;
    // On a phone the names stand above the days, so that only a wide screen keeps a place for them.
    const beside = name.offsetWidth + DAYS_SHOWN_BEFORE * column.offsetWidth;
    frame.current.scrollLeft = column.offsetLeft - (name.offsetWidth > 0 ? beside : 0);
  }, []);

  function show(event: FocusEvent | PointerEvent) {
    const cell = cellOf(event.target);
    const row = cell ? rows[cell.row] : undefined;
    const label = cell?.element.getAttribute("aria-label");
    setInHand(cell && row && label ? `${row.name}, ${days.words[cell.column - 1]}: ${label}.` : "");
  }

  function ask(event: MouseEvent) {
    const cell = cellOf(event.target);
    const row = cell ? rows[cell.row] : undefined;
    const day = cell ? days.days[cell.column - 1] : undefined;
    if (cell && row && day)
      setAsked({ athleteId: row.athleteId, name: row.name, day, element: cell.element });
  }

  return (
    <>
      <div ref={frame} className={styles.frame}>
        <table
          role="grid"
          className={styles.grid}
          style={{ "--days": dayCount } as CSSProperties}
          aria-label="Arms by days. Arrow keys move, Enter says why."
          aria-rowcount={total + 1}
          aria-colcount={dayCount + 1}
          onKeyDown={onKeyDown}
          onFocus={(event) => {
            onFocus(event);
            show(event);
          }}
          onPointerOver={show}
          onPointerLeave={() => setInHand("")}
          onClick={ask}
        >
          <GridHead days={days} />
          <tbody role="rowgroup">
            {rows.map((row, index) => (
              <ArmRow
                key={row.athleteId}
                arm={row}
                days={days}
                index={index}
                rowNumber={firstRow + index + 2}
              />
            ))}
          </tbody>
        </table>
      </div>
      <p className={styles.readout} aria-hidden="true">
        {inHand ||
          "Point at a day, or move to it with Tab and the arrow keys, to read it here. Enter or a click says why."}
      </p>
      {asked ? <CellReasons asked={asked} onClose={() => setAsked(null)} /> : null}
    </>
  );
}
