import type { ReactNode } from "react";
import styles from "./definition-list.module.css";

/** One fact and its name. */
export interface Definition {
  term: string;
  detail: ReactNode;
}

/** Facts by name, one under the other. Terms must differ. */
export function DefinitionList({ items }: { items: readonly Definition[] }) {
  return (
    <dl className={styles.list}>
      {items.map((item) => (
        <div key={item.term} className={styles.entry}>
          <dt>{item.term}</dt>
          <dd>{item.detail}</dd>
        </div>
      ))}
    </dl>
  );
}
