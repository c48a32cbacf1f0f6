import type { Metadata } from "next";
import { Day } from "@/components/today/day";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Today" };

/** What staff owe today and who is coming. */
export default async function TodayPage() {
  return <Day {...(await read((api) => api.today.staff({})))} />;
}
