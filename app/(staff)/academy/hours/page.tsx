import type { Metadata } from "next";
import { HoursScreen } from "@/components/academy/hours-screen";
import { pageNowMs, read } from "@/server/api/page-caller";
import { dayOf } from "@/server/domain/time/calendar-day";

export const metadata: Metadata = { title: "Coaches’ hours" };

export default async function HoursPage() {
  const me = await read((api) => api.account.me({}));
  const coaches = await read((api) => api.hours.list({}));
  const sites = (await read((api) => api.sites.list({}))).filter((site) => !site.isRetired);
  const today = dayOf(await pageNowMs(), sites[0]?.zone ?? "UTC");
  return <HoursScreen coaches={coaches} sites={sites} today={today} isAdmin={me.roles.includes("admin")} />;
}
