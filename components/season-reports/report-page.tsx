"use client";
import { type ReactNode, useState } from "react";
import { Button } from "@/components/ui/button";
import { Notice } from "@/components/ui/notice";
import { PageHeading } from "@/components/ui/page-heading";
import { spanInWords } from "@/server/domain/season-reports/season-span";
import { PrintButton } from "./print-button";
import { asOfWords, SeasonReport } from "./report";
import type { ReportView } from "./report-answer";
import { ReportLinks } from "./report-links";
import { SpanChoice } from "./span-choice";
import { WriteFocus } from "./write-focus";

/** What a {@link ReportPage} takes. */
export interface ReportPageProps {
  view: ReportView;
  /** Where the way back leads, before the name. */
  place?: ReactNode;
}

/** The report of one athlete for staff and family: the season to choose, the two pages, the links that open it. */
export function ReportPage({ view, place }: ReportPageProps) {
  const { report, athlete, links, mayWrite, mayShare, mayRevoke } = view;
  const [isWriting, setWriting] = useState(false);
  const span = { fromOn: report.fromOn, toOn: report.toOn };
  return (
    <div data-print="document">
      <PageHeading
        place={
          <>
            {place}
            {athlete.name}, {spanInWords(span)}, {report.academyName}
          </>
        }
        question="What did the season bring?"
        detail={`What is on record, ${asOfWords(report)}.`}
        actions={
          <>
            <PrintButton />
            {mayWrite ? (
              <Button onPress={() => setWriting(true)}>
                {report.focus ? "Write the next focus anew" : "Write the next season’s focus"}
              </Button>
            ) : null}
          </>
        }
      />
      <SpanChoice spans={view.spans} shown={span} />
      {view.spanProblem ? (
        <Notice kind="attention" title={view.spanProblem} isStatic>
          Another season is shown. Choose other days.
        </Notice>
      ) : null}
      <SeasonReport report={report} athleteName={athlete.name} />
      <ReportLinks
        key={athlete.athleteId}
        athlete={athlete}
        span={span}
        links={links}
        mayShare={mayShare}
        mayRevoke={mayRevoke}
      />
      {isWriting ? <WriteFocus view={view} onClose={() => setWriting(false)} /> : null}
    </div>
  );
}
