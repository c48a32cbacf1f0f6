import { academyRouter } from "./routers/academy";
import { accountRouter } from "./routers/account";
import { agreementRouter } from "./routers/agreement";
import { armsRouter } from "./routers/arms";
import { athletesRouter } from "./routers/athletes";
import { calendarRouter } from "./routers/calendar";
import { checkpointsRouter } from "./routers/checkpoints";
import { clipsRouter } from "./routers/clips";
import { consentRouter } from "./routers/consent";
import { evidenceRouter } from "./routers/evidence";
import { familiesRouter } from "./routers/families";
import { hoursRouter } from "./routers/hours";
import { invitationsRouter } from "./routers/invitations";
import { ledgerRouter } from "./routers/ledger";
import { measurementsRouter } from "./routers/measurements";
import { noticesRouter } from "./routers/notices";
import { peopleRouter } from "./routers/people";
import { practiceRouter } from "./routers/practice";
import { ratesRouter } from "./routers/rates";
import { reviewTemplatesRouter } from "./routers/review-templates";
import { reviewsRouter } from "./routers/reviews";
import { roundsRouter } from "./routers/rounds";
import { ruleBooksRouter } from "./routers/rule-books";
import { seasonReportsRouter } from "./routers/season-reports";
import { sessionsRouter } from "./routers/sessions";
import { sitesRouter } from "./routers/sites";
import { teamsRouter } from "./routers/teams";
import { throwImportRouter } from "./routers/throw-import";
import { throwingRouter } from "./routers/throwing";
import { todayRouter } from "./routers/today";
import { router } from "./trpc";

/** Every procedure of the academy, one router a capability. */
export const appRouter = router({
  athletes: athletesRouter,
  today: todayRouter,
  arms: armsRouter,
  throwing: throwingRouter,
  teams: teamsRouter,
  throwImport: throwImportRouter,
  clips: clipsRouter,
  sessions: sessionsRouter,
  calendar: calendarRouter,
  ledger: ledgerRouter,
  rounds: roundsRouter,
  seasonReports: seasonReportsRouter,
  reviews: reviewsRouter,
  measurements: measurementsRouter,
  agreement: agreementRouter,
  evidence: evidenceRouter,
  reviewTemplates: reviewTemplatesRouter,
  practice: practiceRouter,
  people: peopleRouter,
  notices: noticesRouter,
  invitations: invitationsRouter,
  families: familiesRouter,
  consent: consentRouter,
  sites: sitesRouter,
  rates: ratesRouter,
  ruleBooks: ruleBooksRouter,
  hours: hoursRouter,
  checkpoints: checkpointsRouter,
  academy: academyRouter,
  account: accountRouter,
});

export type AppRouter = typeof appRouter;
