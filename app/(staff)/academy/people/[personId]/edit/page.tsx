import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { EditAthlete } from "@/components/people/edit-athlete";
import { EditPerson } from "@/components/people/edit-person";
import { pageNowMs, read } from "@/server/api/page-caller";
import { dayOf } from "@/server/domain/time/calendar-day";

export const metadata: Metadata = { title: "Edit" };

export default async function EditPersonPage({ params }: { params: Promise<{ personId: string }> }) {
  const { personId } = await params;
  const me = await read((api) => api.account.me({}));
  if (!me.roles.includes("admin")) notFound();
  const person = await read((api) => api.people.person({ personId }));
  const { athlete } = person;
  if (!athlete) return <EditPerson person={person} />;
  const choices = await read((api) => api.people.choices({}));
  const today = dayOf(await pageNowMs(), athlete.zone);
  return <EditAthlete person={person} athlete={athlete} choices={choices} today={today} />;
}
