import type { Metadata } from "next";
import { FamilySession } from "@/components/sessions/family-session";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Session" };

interface SessionPageProps {
  params: Promise<{ athleteId: string; sessionId: string }>;
}

/** One session of an athlete: when, where, the plan, what was done; moved or cancelled from here. */
export default async function FamilySessionPage({ params }: SessionPageProps) {
  const { athleteId, sessionId } = await params;
  const view = await read((api) => api.sessions.forFamily({ sessionId, athleteId }));
  const me = await read((api) => api.account.me({}));
  const givenName = me.athletes.find((one) => one.athleteId === athleteId)?.givenName ?? "";
  return <FamilySession view={view} athlete={{ athleteId, givenName }} />;
}
