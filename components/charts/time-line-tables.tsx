"use client";

import Link from "next/link";
import { useState } from "react";
import { type Column, Table } from "../ui/table";
import styles from "./chart.module.css";
import type { TimeAxis } from "./time-axis";
import { isOn, whenInWords } from "./time-line-layout";
import type { TimeLineItem, TimeLineRow } from "./time-line-parts";

/** What {@link TimeLineTables} takes. */
export interface TimeLineTablesProps {
  rows: readonly TimeLineRow[];
  items: readonly TimeLineItem[];
  axis: TimeAxis;
}

const COLUMNS: readonly Column<TimeLineItem>[] = [
  {
    key: "what",
    heading: "What",
    isRowHeading: true,
    cell: ({ label, href }) => (href ? <Link href={href}>{label}</Link> : label),
  },
  { key: "how", heading: "How it stands", cell: ({ state }) => state },
  { key: "when", heading: "When", cell: (item) => item.when ?? whenInWords(item) },
];

/** What a time line shows as one table a row, latest first; written once somebody opens it, for there may be hundreds. */
export function TimeLineTables({ rows, items, axis }: TimeLineTablesProps) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details className={styles.table} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>The same as tables</summary>
      {isOpen
        ? rows.map(({ key, label }) => (
            <Table
              key={key}
              caption={label}
              columns={COLUMNS}
              rows={items
                .filter((item) => item.row === key && isOn(axis, item))
                .sort((a, b) => (a.startDay < b.startDay ? 1 : -1))}
              rowKey={({ id }) => id}
              empty="Nothing in these days."
            />
          ))
        : null}
    </details>
  );
}
