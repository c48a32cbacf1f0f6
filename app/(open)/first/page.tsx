import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { StartAcademy } from "@/components/people/start-academy";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Start an academy" };

export default async function StartPage() {
  const { exists } = await read((api) => api.account.academyExists({}));
  if (exists) redirect("/sign-in");
  return <StartAcademy zone={Intl.DateTimeFormat().resolvedOptions().timeZone} />;
}
