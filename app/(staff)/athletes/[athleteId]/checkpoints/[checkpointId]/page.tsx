import type { Metadata } from "next";
import { CheckpointPage } from "@/components/evidence/checkpoint-page";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Checkpoint" };

interface CheckpointEvidencePageProps {
  params: Promise<{ athleteId: string; checkpointId: string }>;
}

/** What is on record of one athlete at one checkpoint, and what it carries. */
export default async function CheckpointEvidencePage({ params }: CheckpointEvidencePageProps) {
  const asked = await params;
  return <CheckpointPage evidence={await read((api) => api.evidence.checkpoint(asked))} />;
}
