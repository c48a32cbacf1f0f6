import type { Metadata } from "next";
import { SetScreen } from "@/components/agreement/set-screen";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Coach agreement" };

/** One blind set: who is how far, or how far the coaches agree. */
export default async function BlindSetPage({ params }: { params: Promise<{ setId: string }> }) {
  const { setId } = await params;
  const set = await read((api) => api.agreement.set({ setId }));
  const [site] = await read((api) => api.sites.list({}));
  return <SetScreen set={set} zone={site?.zone ?? "UTC"} />;
}
