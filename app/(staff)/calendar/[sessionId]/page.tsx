import type { Metadata } from "next";
import { StaffSession } from "@/components/sessions/staff-session";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Session" };

/** One session: who comes, the check-in, the plan, the log. */
export default async function SessionPage({ params }: { params: Promise<{ sessionId: string }> }) {
  const { sessionId } = await params;
  return <StaffSession view={await read((api) => api.sessions.forStaff({ sessionId }))} />;
}
