import type { Metadata } from "next";
import { holdingPlace } from "@/components/holding/holding-address";
import { HoldingScreen } from "@/components/holding/holding-screen";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Holding" };

export default async function HoldingPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const place = holdingPlace(await searchParams);
  const ledger = await read((api) => api.evidence.holding(place));
  return <HoldingScreen ledger={ledger} place={place} />;
}
