import type { Metadata } from "next";
import { Room } from "@/components/reviews/room";
import { frameAsked } from "@/components/reviews/room-address";
import { pageNowMs, read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Review room" };

interface ReviewRoomPageProps {
  params: Promise<{ roundId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}

/** The room in which one round is reviewed and checked; on a frame where the address names one. */
export default async function ReviewRoomPage({ params, searchParams }: ReviewRoomPageProps) {
  const { roundId } = await params;
  const room = await read((api) => api.reviews.room({ roundId }));
  return <Room room={room} nowMs={await pageNowMs()} start={frameAsked(await searchParams)} />;
}
