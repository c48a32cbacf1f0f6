import type { Metadata } from "next";
import { SendPage } from "@/components/clips/send-page";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Send" };

/** Sending clips; with `?round=` into a round that waits for one, else into the one that has waited longest. */
export default async function SendClipsPage({
  params,
  searchParams,
}: {
  params: Promise<{ athleteId: string }>;
  searchParams: Promise<{ round?: string | string[] }>;
}) {
  const { athleteId } = await params;
  const { round } = await searchParams;
  const facts = await read((api) => api.clips.sending({ athleteId }));
  const waiting = await read((api) => api.clips.waiting({ athleteId }));
  const wanted = facts.rounds.find((each) => each.roundId === round) ?? facts.rounds[0];
  return <SendPage {...facts} athleteId={athleteId} waiting={waiting} roundId={wanted?.roundId ?? null} />;
}
