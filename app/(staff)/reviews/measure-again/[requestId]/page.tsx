import type { Metadata } from "next";
import { BlindMeasure } from "@/components/remeasure/blind-measure";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Measure again" };

/** One frame that is measured a second time, without its points in sight. */
export default async function BlindMeasurePage({ params }: { params: Promise<{ requestId: string }> }) {
  const { requestId } = await params;
  const blind = await read((api) => api.measurements.blind({ requestId }));
  return <BlindMeasure key={requestId} blind={blind} />;
}
