import type { Metadata } from "next";
import { MonthScreen } from "@/components/ledger/month-screen";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Ledger" };

/** Whether a month adds up, and its file. */
export default async function LedgerPage({ searchParams }: { searchParams: Promise<{ month?: string }> }) {
  const { month } = await searchParams;
  return <MonthScreen books={await read((api) => api.ledger.month({ month: month ?? null }))} />;
}
