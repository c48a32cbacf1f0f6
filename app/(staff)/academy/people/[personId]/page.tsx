import type { Metadata } from "next";
import { PersonScreen } from "@/components/people/person-screen";
import { pageNowMs, read } from "@/server/api/page-caller";
import { dayOf } from "@/server/domain/time/calendar-day";

export const metadata: Metadata = { title: "Person" };

export default async function PersonPage({ params }: { params: Promise<{ personId: string }> }) {
  const { personId } = await params;
  const me = await read((api) => api.account.me({}));
  const person = await read((api) => api.people.person({ personId }));
  const choices = await read((api) => api.people.choices({}));
  const zone = person.athlete?.zone ?? choices.sites[0]?.zone ?? "UTC";
  return (
    <PersonScreen
      person={person}
      choices={choices}
      today={dayOf(await pageNowMs(), zone)}
      isAdmin={me.roles.includes("admin")}
    />
  );
}
