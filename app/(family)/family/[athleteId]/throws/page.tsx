import type { Metadata } from "next";
import { Overrides } from "@/components/throwing/overrides";
import { ThrowingPage } from "@/components/throwing/throwing-page";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Throws" };

/** The family's throw log. */
export default async function ThrowsPage({ params }: { params: Promise<{ athleteId: string }> }) {
  const { athleteId } = await params;
  const view = await read((api) => api.throwing.view({ athleteId }));
  const overrides = await read((api) => api.ruleBooks.overrides({ athleteId }));
  return (
    <ThrowingPage
      view={view}
      overrides={<Overrides athlete={view.athlete} today={view.today} answer={overrides} />}
    />
  );
}
