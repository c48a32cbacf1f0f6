import type { Metadata } from "next";
import { NoReport, SharedReport } from "@/components/season-reports/shared-report";
import { chosenTheme } from "@/components/shell/chosen-theme";
import { PlainShell } from "@/components/shell/plain-shell";
import { readShared } from "@/server/api/season-reports/read-shared";

export const metadata: Metadata = {
  title: "Season report",
  referrer: "no-referrer",
  robots: { index: false, follow: false, noarchive: true },
};

/** A season's report by a link, for whoever has it. */
export default async function SharedReportPage({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params;
  const found = await readShared(token);
  return (
    <PlainShell homeHref="/" theme={await chosenTheme()} isWide>
      {found.kind === "report" ? <SharedReport shared={found.shared} /> : <NoReport wait={found.wait} />}
    </PlainShell>
  );
}
