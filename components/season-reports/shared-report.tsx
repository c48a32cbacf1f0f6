import { PageHeading } from "@/components/ui/page-heading";
import type { Answers } from "@/components/wire/answers";
import { spanInWords } from "@/server/domain/season-reports/season-span";
import { momentInWords } from "@/server/domain/time/words";
import { PrintButton } from "./print-button";
import { asOfWords, SeasonReport } from "./report";

type Shared = NonNullable<Answers["seasonReports"]["shared"]>;

/** The report as a link shows it: a given name and an initial, and until when it is there. */
export function SharedReport({ shared }: { shared: Shared }) {
  const { report, athleteName, expiresAtMs, zone } = shared;
  return (
    <div data-print="document">
      <PageHeading
        place={`${athleteName}, ${spanInWords(report)}, ${report.academyName}`}
        question="What did the season bring?"
        detail={
          <>
            What is on record, {asOfWords(report)}.
            <span data-print="no">
              {" "}
              This link opens it until {momentInWords(expiresAtMs, zone, { withYear: true })}.
            </span>
          </>
        }
        actions={<PrintButton />}
      />
      <SeasonReport report={report} athleteName={athleteName} />
    </div>
  );
}

/** What every link that opens nothing leads to, whether it expired, was ended or never was. */
export function NoReport({ wait }: { wait: string | null }) {
  return (
    <PageHeading
      question={wait === null ? "This link does not open a report" : "Can this wait a little?"}
      detail={
        wait ??
        "It may have expired, or whoever made it ended it. Nothing is wrong with your device. Ask the family for a new link; those who sign in at the academy find the report on the athlete’s pages."
      }
    />
  );
}
