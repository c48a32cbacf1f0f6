import type { Metadata } from "next";
import { ThrowingPage } from "@/components/throwing/throwing-page";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Throws" };

/** The family's throw log. */
export default async function ThrowsPage({ params }: { params: Promise<{ athleteId: string }> }) {
  const { athleteId } = await params;
  const view = await read((api) => api.throwing.view({ athleteId }));
  return <ThrowingPage view={view} />;
}
