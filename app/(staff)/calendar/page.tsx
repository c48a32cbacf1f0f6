import type { Metadata } from "next";
import { DayCalendar } from "@/components/calendar/day-calendar";
import { WeekCalendar } from "@/components/calendar/week-calendar";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Calendar" };

interface CalendarPageProps {
  searchParams: Promise<{ view?: string; day?: string; site?: string }>;
}

/** Who is where: a day by lane, or a week by coach. */
export default async function CalendarPage({ searchParams }: CalendarPageProps) {
  const { view, day, site } = await searchParams;
  const place = { day: day ?? null, siteId: site ?? null };
  if (view === "week") {
    return <WeekCalendar calendar={await read((api) => api.calendar.week(place))} {...place} />;
  }
  return <DayCalendar calendar={await read((api) => api.calendar.day(place))} siteId={place.siteId} />;
}
