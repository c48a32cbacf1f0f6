import type { Metadata } from "next";
import Link from "next/link";
import { askedSpan } from "@/components/season-reports/asked-span";
import { ReportPage } from "@/components/season-reports/report-page";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Season report" };

/** An athlete's season report, for staff. */
export default async function StaffReportPage({
  params,
  searchParams,
}: {
  params: Promise<{ athleteId: string }>;
  searchParams: Promise<{ from?: string | string[]; to?: string | string[] }>;
}) {
  const { athleteId } = await params;
  const span = askedSpan(await searchParams);
  const view = await read((api) => api.seasonReports.view({ athleteId, span }));
  const place = (
    <span data-print="no">
      <Link href="/athletes">Athletes</Link>, <Link href={`/athletes/${athleteId}`}>season</Link>,{" "}
    </span>
  );
  return <ReportPage view={view} place={place} />;
}
