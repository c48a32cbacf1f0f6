import type { Metadata } from "next";
import { ConsentScreen } from "@/components/people/consent-screen";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Consent" };

export default async function ConsentPage({ params }: { params: Promise<{ athleteId: string }> }) {
  const { athleteId } = await params;
  const state = await read((api) => api.consent.state({ athleteId }));
  return <ConsentScreen athleteId={athleteId} state={state} />;
}
