import type { Metadata } from "next";
import { TemplatesScreen } from "@/components/academy/templates-screen";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Usual reviews" };

export default async function TemplatesPage() {
  const me = await read((api) => api.account.me({}));
  const templates = await read((api) => api.reviewTemplates.list({}));
  const checkpoints = await read((api) => api.checkpoints.list({}));
  return (
    <TemplatesScreen templates={templates} checkpoints={checkpoints} isAdmin={me.roles.includes("admin")} />
  );
}
