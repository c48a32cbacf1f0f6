import type { Metadata } from "next";
import { ReadingList } from "@/components/reviews/reading-list";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Rounds" };

/** Every round of an athlete. */
export default async function RoundsPage({ params }: { params: Promise<{ athleteId: string }> }) {
  const { athleteId } = await params;
  const list = await read((api) => api.reviews.list({ athleteId }));
  return <ReadingList athleteId={athleteId} list={list} />;
}
