import type { Metadata } from "next";
import { AthleteList } from "@/components/athletes/athlete-list";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Athletes" };

/** Every athlete and how the arm stands today. */
export default async function AthletesPage() {
  return <AthleteList {...(await read((api) => api.athletes.list({})))} />;
}
