import type { Metadata } from "next";
import { BlindScreen } from "@/components/agreement/blind-screen";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Rate alone" };

/** The frame of a blind set that a coach rates next. */
export default async function BlindRatingPage({ params }: { params: Promise<{ setId: string }> }) {
  const { setId } = await params;
  return <BlindScreen next={await read((api) => api.agreement.next({ setId }))} />;
}
