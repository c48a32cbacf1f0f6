import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { Reading } from "@/components/reviews/reading";
import { PageHeading } from "@/components/ui/page-heading";
import { read } from "@/server/api/page-caller";
import { dayOf } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";

export const metadata: Metadata = { title: "What to work on" };

/** One round as the family reads it. */
export default async function RoundPage({
  params,
}: {
  params: Promise<{ athleteId: string; roundId: string }>;
}) {
  const { athleteId, roundId } = await params;
  const reading = await read((api) => api.reviews.read({ roundId }));
  if (reading.athlete.athleteId !== athleteId) notFound();
  const received = dayInWords(dayOf(reading.round.receivedAtMs, reading.zone));
  return (
    <>
      <PageHeading
        question="What am I working on?"
        place={<Link href={`/family/${athleteId}/rounds`}>All rounds</Link>}
        detail={`${reading.athlete.givenName}'s clip of ${received}${reading.coachName ? `, with ${reading.coachName}` : ""}`}
      />
      <Reading reading={reading} mayTick />
    </>
  );
}
