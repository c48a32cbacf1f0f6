import type { Metadata } from "next";
import { Compare } from "@/components/reviews/compare";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Old and new" };

/** A clip of a round beside an earlier one of the same view. */
export default async function ComparePage({
  params,
  searchParams,
}: {
  params: Promise<{ roundId: string }>;
  searchParams: Promise<{ clip?: string | string[]; with?: string | string[] }>;
}) {
  const { roundId } = await params;
  const { clip, with: withClip } = await searchParams;
  const asked = { roundId, clipId: one(clip), withClipId: one(withClip) };
  return <Compare compare={await read((api) => api.reviews.compare(asked))} />;
}

const one = (value: string | string[] | undefined) => (typeof value === "string" && value ? value : null);
