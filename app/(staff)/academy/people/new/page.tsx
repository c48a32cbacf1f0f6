import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { AddAthlete } from "@/components/people/add-athlete";
import { pageNowMs, read } from "@/server/api/page-caller";
import { dayOf } from "@/server/domain/time/calendar-day";

export const metadata: Metadata = { title: "Add an athlete" };

export default async function AddAthletePage() {
  const me = await read((api) => api.account.me({}));
  if (!me.roles.includes("admin")) notFound();
  const choices = await read((api) => api.people.choices({}));
  const today = dayOf(await pageNowMs(), choices.sites[0]?.zone ?? "UTC");
  return <AddAthlete choices={choices} today={today} />;
}
