import type { ReactNode } from "react";
import styles from "./grouped.module.css";

/** What {@link Grouped} takes. */
export interface GroupedProps<Row> {
  rows: readonly Row[];
  groupOf: (row: Row) => string;
  children: (rows: readonly Row[]) => ReactNode;
}

/** Rows under the names of their groups, in the order the groups come up; a single group needs no name. */
export function Grouped<Row>({ rows, groupOf, children }: GroupedProps<Row>) {
  const groups = new Map<string, Row[]>();
  for (const row of rows) groups.set(groupOf(row), [...(groups.get(groupOf(row)) ?? []), row]);
  if (groups.size < 2) return children(rows);
  return [...groups].map(([name, own]) => (
    <div key={name} className={styles.group}>
      <h3>{name}</h3>
      {children(own)}
    </div>
  ));
}
