import { type SQL, sql } from "drizzle-orm";
import { type AnySQLiteColumn, check, integer, text } from "drizzle-orm/sqlite-core";

/** An instant in UTC epoch milliseconds. */
export const instant = (name: string) => integer(name);

/** A calendar day `YYYY-MM-DD`. */
export const day = (name: string) => text(name);

/** A yes or no, stored as 0 or 1. */
export const flag = (name: string) => integer(name, { mode: "boolean" });

/** CHECK that a column holds one of the domain's values. */
export function oneOf(name: string, column: AnySQLiteColumn, values: readonly string[]) {
  const list = values.map((value) => `'${value}'`).join(", ");
  return check(name, sql`${column} IN (${sql.raw(list)})`);
}

/** CHECK that a column (when set) lies within `[min, max]`. */
export function within(name: string, column: AnySQLiteColumn, min: number, max: number) {
  return check(name, sql`${column} BETWEEN ${sql.raw(String(min))} AND ${sql.raw(String(max))}`);
}

/** CHECK that a column (when set) is written as a day. */
export function isDay(name: string, column: AnySQLiteColumn) {
  return check(name, sql`${column} GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'`);
}

/** CHECK by a hand-written condition. */
export function holds(name: string, condition: SQL) {
  return check(name, condition);
}
