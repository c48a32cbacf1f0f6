"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";
import { currentHref, type NavItem } from "./current-link";
import styles from "./shell.module.css";

/** The places there are, the current one marked. */
export function NavLinks({ items, label }: { items: readonly NavItem[]; label: string }) {
  const current = currentHref(usePathname() ?? "/", items);
  return (
    <nav aria-label={label} className={styles.nav} data-print="no">
      <ul className={styles.navList}>
        {items.map((item) => (
          <li key={item.href}>
            <Link
              href={item.href}
              className={styles.navLink}
              aria-current={item.href === current ? "page" : undefined}
            >
              <span className={styles.navLabel}>{item.label}</span>
              {item.count ? (
                <span className={styles.navCount}>
                  {item.count}
                  {item.countLabel ? <span className={styles.heard}> {item.countLabel}</span> : null}
                </span>
              ) : null}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
