import type { Metadata } from "next";
import { AcademyOverview } from "@/components/academy/academy-overview";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Academy" };

export default async function AcademyPage() {
  const me = await read((api) => api.account.me({}));
  const overview = await read((api) => api.academy.overview({}));
  return <AcademyOverview overview={overview} isAdmin={me.roles.includes("admin")} />;
}
