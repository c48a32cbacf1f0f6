import type { Metadata } from "next";
import { pageNumber } from "@/components/academy/asked-for";
import { RecordScreen } from "@/components/academy/record-screen";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Record" };

export default async function RecordPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const page = pageNumber((await searchParams).page);
  const record = await read((api) => api.academy.record({ page }));
  const [site] = await read((api) => api.sites.list({}));
  return <RecordScreen record={record} page={page} zone={site?.zone ?? "UTC"} />;
}
