import type { Db } from "@/db/client";
import { findSettings } from "@/server/data/academy-settings";
import { monthRecords } from "@/server/data/months";
import { monthRows } from "@/server/domain/ledger/month";
import { monthCsv } from "./month-csv";

/**
 * The month's file: its name and its CSV text.
 * @param month `YYYY-MM`
 * @example fileName "slabside-2026-11.csv"
 */
export async function monthFile(db: Db, month: string): Promise<{ fileName: string; csv: string }> {
  const currency = (await findSettings(db))?.currency ?? "USD";
  const books = monthRows(await monthRecords(db, month, currency));
  return { fileName: `slabside-${month}.csv`, csv: monthCsv({ ...books, currency }) };
}
