import type { Metadata } from "next";
import { pageNumber, wordOf } from "@/components/academy/asked-for";
import { PeopleScreen } from "@/components/people/people-screen";
import { pageNowMs, read } from "@/server/api/page-caller";
import { PERSON_KINDS } from "@/server/domain/people/people-filter";
import { dayOf } from "@/server/domain/time/calendar-day";

export const metadata: Metadata = { title: "People" };

export default async function PeoplePage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const asked = await searchParams;
  const search = typeof asked.search === "string" ? asked.search.slice(0, 80) : "";
  const filter = { search, kind: wordOf(asked.kind, PERSON_KINDS) };
  const page = pageNumber(asked.page);
  const me = await read((api) => api.account.me({}));
  const people = await read((api) => api.people.list({ ...filter, page }));
  const [site] = await read((api) => api.sites.list({}));
  const today = dayOf(await pageNowMs(), site?.zone ?? "UTC");
  return (
    <PeopleScreen
      people={people}
      filter={filter}
      page={page}
      today={today}
      isAdmin={me.roles.includes("admin")}
    />
  );
}
