import type { Metadata } from "next";
import { RatesScreen } from "@/components/academy/rates-screen";
import { pageNowMs, read } from "@/server/api/page-caller";
import { dayOf } from "@/server/domain/time/calendar-day";

export const metadata: Metadata = { title: "Prices" };

export default async function RatesPage() {
  const { currency, rates } = await read((api) => api.rates.list({}));
  const [site] = await read((api) => api.sites.list({}));
  const today = dayOf(await pageNowMs(), site?.zone ?? "UTC");
  return <RatesScreen currency={currency} rates={rates} today={today} />;
}
