import type { Metadata } from "next";
import { Season } from "@/components/season/season";
import { LinkButton } from "@/components/ui/link-button";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Season" };

/** The family's season. */
export default async function FamilySeasonPage({ params }: { params: Promise<{ athleteId: string }> }) {
  const { athleteId } = await params;
  return (
    <Season
      season={await read((api) => api.athletes.season({ athleteId }))}
      side="family"
      actions={<LinkButton href={`/family/${athleteId}/report`}>Season report</LinkButton>}
    />
  );
}
