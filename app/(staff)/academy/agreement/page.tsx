import type { Metadata } from "next";
import { AgreementScreen } from "@/components/agreement/agreement-screen";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Coach agreement" };

/** The blind sets of the academy, and for an admin what one can be drawn from. */
export default async function AgreementPage() {
  const sets = await read((api) => api.agreement.sets({}));
  const pool = sets.isAdmin ? await read((api) => api.agreement.pool({})) : null;
  const [site] = await read((api) => api.sites.list({}));
  return <AgreementScreen {...sets} pool={pool} zone={site?.zone ?? "UTC"} />;
}
