import type { Metadata } from "next";
import { SitesScreen } from "@/components/academy/sites-screen";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Sites and lanes" };

export default async function SitesPage() {
  const me = await read((api) => api.account.me({}));
  const sites = await read((api) => api.sites.list({}));
  return <SitesScreen sites={sites} isAdmin={me.roles.includes("admin")} />;
}
