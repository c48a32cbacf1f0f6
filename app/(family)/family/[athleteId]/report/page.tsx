import type { Metadata } from "next";
import { askedSpan } from "@/components/season-reports/asked-span";
import { ReportPage } from "@/components/season-reports/report-page";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Season report" };

/** The family's season report. */
export default async function FamilyReportPage({
  params,
  searchParams,
}: {
  params: Promise<{ athleteId: string }>;
  searchParams: Promise<{ from?: string | string[]; to?: string | string[] }>;
}) {
  const { athleteId } = await params;
  const span = askedSpan(await searchParams);
  return <ReportPage view={await read((api) => api.seasonReports.view({ athleteId, span }))} />;
}
