import type { Answers } from "@/components/wire/answers";

/** A season's report as it is answered, whoever reads it. */
export type Report = Answers["seasonReports"]["view"]["report"];

/** The report with what its reader may do. */
export type ReportView = Answers["seasonReports"]["view"];

/** A link to a report, without its address. */
export type ReportLink = ReportView["links"][number];
