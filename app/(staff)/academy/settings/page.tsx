import type { Metadata } from "next";
import { SettingsForm } from "@/components/academy/settings-form";
import { SettingsLines } from "@/components/academy/settings-lines";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Settings" };

export default async function SettingsPage() {
  const me = await read((api) => api.account.me({}));
  const kept = await read((api) => api.academy.settings({}));
  if (!me.roles.includes("admin")) return <SettingsLines settings={kept.settings} />;
  return <SettingsForm key={kept.version} kept={kept} />;
}
