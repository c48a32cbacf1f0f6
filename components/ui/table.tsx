// biome-ignore-all lint/a11y/noRedundantRoles: a browser drops the roles of a table whose rows become a grid on phones
import type { ReactNode } from "react";
import { joinClasses } from "./join-classes";
import styles from "./table.module.css";
import { VisuallyHidden } from "./visually-hidden";

/** One column of a {@link Table}. */
export interface Column<Row> {
  /** Unique within the table. */
  key: string;
  /** The column's name; also each value's label on a phone. */
  heading: string;
  /** The name is only read out, for a column of actions. */
  isHeadingHidden?: boolean;
  cell: (row: Row) => ReactNode;
  /** `number` aligns to the end on tabular numerals. Default `start`. */
  align?: "start" | "number";
  /** This column names the row. At most one, usually the first. */
  isRowHeading?: boolean;
  /** As narrow as its content. */
  isFit?: boolean;
  /** The cell of the last, summing line; that line's heading is "In all" unless given here. */
  total?: ReactNode;
}

/** What the column of a row's actions has beside its cells: a heading that is only read out, and no room to spare. */
export const ACTS_COLUMN = {
  key: "acts",
  heading: "What can be done",
  isHeadingHidden: true,
  isFit: true,
} as const;

/** What a {@link Table} takes. */
export interface TableProps<Row> {
  /** What the table tells; read out, and shown unless hidden. */
  caption: string;
  isCaptionHidden?: boolean;
  columns: readonly Column<Row>[];
  rows: readonly Row[];
  rowKey: (row: Row) => string;
  /** The row in hand, marked by a slab at its edge and `aria-current`. */
  isCurrent?: (row: Row) => boolean;
  /** Shown in place of rows when there are none. */
  empty?: ReactNode;
  /** `stack` (the default) turns rows into labelled stacks on a phone, `scroll` keeps the grid and scrolls it. */
  onPhone?: "stack" | "scroll";
  /** For a table that scrolls and holds nothing to be focused: its frame can be, so that the arrow keys scroll it. */
  isFrameFocusable?: boolean;
}

/** Rows and columns with a caption. Roles are spelt out, because a browser drops them when rows become stacks. */
export function Table<Row>(props: TableProps<Row>) {
  const { caption, columns, rows, rowKey, isCurrent, empty, onPhone = "stack" } = props;
  const hasTotals = columns.some((column) => column.total !== undefined);
  return (
    <div className={styles.frame} {...(props.isFrameFocusable ? focusable(caption) : {})}>
      <table role="table" className={joinClasses(styles.table, onPhone === "stack" && styles.stacked)}>
        <caption className={styles.caption}>
          {props.isCaptionHidden ? <VisuallyHidden>{caption}</VisuallyHidden> : caption}
        </caption>
        <thead role="rowgroup">
          <tr role="row">
            {columns.map((column) => (
              <th key={column.key} role="columnheader" scope="col" className={cellClasses(column)}>
                {column.isHeadingHidden ? <VisuallyHidden>{column.heading}</VisuallyHidden> : column.heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody role="rowgroup">
          {rows.map((row) => (
            <tr
              key={rowKey(row)}
              role="row"
              className={joinClasses(styles.row, isCurrent?.(row) && styles.current)}
              aria-current={isCurrent?.(row) ? "true" : undefined}
            >
              {columns.map((column) => (
                <Cell key={column.key} column={column}>
                  {column.cell(row)}
                </Cell>
              ))}
            </tr>
          ))}
        </tbody>
        {hasTotals && rows.length > 0 ? (
          <tfoot role="rowgroup">
            <tr role="row">
              {columns.map((column) => (
                <Cell key={column.key} column={column}>
                  {column.total ?? (column.isRowHeading ? "In all" : null)}
                </Cell>
              ))}
            </tr>
          </tfoot>
        ) : null}
      </table>
      {rows.length === 0 && empty ? <div className={styles.empty}>{empty}</div> : null}
    </div>
  );
}

const focusable = (label: string) => ({ role: "group", "aria-label": label, tabIndex: 0 });

function Cell<Row>({ column, children }: { column: Column<Row>; children: ReactNode }) {
  if (column.isRowHeading) {
    return (
      <th role="rowheader" scope="row" className={cellClasses(column)}>
        {children}
      </th>
    );
  }
  return (
    <td role="cell" className={joinClasses(cellClasses(column), column.isHeadingHidden && styles.unnamed)}>
      {column.isHeadingHidden ? null : (
        <span className={styles.cellLabel} aria-hidden="true">
          {column.heading}
        </span>
      )}
      <span className={styles.value}>{children}</span>
    </td>
  );
}

function cellClasses<Row>(column: Column<Row>): string {
  return joinClasses(column.align === "number" && styles.number, column.isFit && styles.fit);
}
