import type { Metadata } from "next";
import { pageNumber, wordOf } from "@/components/academy/asked-for";
import { Outbox } from "@/components/notices/outbox";
import { read } from "@/server/api/page-caller";
import { NOTICE_STATES } from "@/server/domain/notices/notice";

export const metadata: Metadata = { title: "Notices" };

export default async function NoticesPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const asked = await searchParams;
  const page = pageNumber(asked.page);
  const state = wordOf(asked.state, NOTICE_STATES);
  const outbox = await read((api) => api.notices.list({ page, state }));
  const [site] = await read((api) => api.sites.list({}));
  return <Outbox outbox={outbox} page={page} state={state} zone={site?.zone ?? "UTC"} />;
}
