import type { Metadata } from "next";
import { RemeasureList } from "@/components/remeasure/remeasure-list";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Measure again" };

/** What waits to be measured a second time, and how sure measures are. */
export default async function MeasureAgainPage() {
  return <RemeasureList {...(await read((api) => api.measurements.again({})))} />;
}
