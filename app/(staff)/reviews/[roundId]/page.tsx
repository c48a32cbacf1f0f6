import type { Metadata } from "next";
import { Room } from "@/components/reviews/room";
import { pageNowMs, read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Review room" };

/** The room in which one round is reviewed and checked. */
export default async function ReviewRoomPage({ params }: { params: Promise<{ roundId: string }> }) {
  const { roundId } = await params;
  const room = await read((api) => api.reviews.room({ roundId }));
  return <Room room={room} nowMs={await pageNowMs()} />;
}
