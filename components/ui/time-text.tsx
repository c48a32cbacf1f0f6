import type { ReactNode } from "react";

/** A point in time in words, with the same point for machines. */
export function TimeText({ dateTime, children }: { dateTime: string | number; children: ReactNode }) {
  const iso = typeof dateTime === "number" ? new Date(dateTime).toISOString() : dateTime;
  return <time dateTime={iso}>{children}</time>;
}
