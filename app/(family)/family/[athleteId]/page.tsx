import type { Metadata } from "next";
import { FamilyHome } from "@/components/home/family-home";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Home" };

/** A family's first screen. */
export default async function FamilyHomePage({ params }: { params: Promise<{ athleteId: string }> }) {
  const { athleteId } = await params;
  const view = await read((api) => api.today.family({ athleteId }));
  return <FamilyHome {...view} />;
}
