import { academyRouter } from "./routers/academy";
import { accountRouter } from "./routers/account";
import { checkpointsRouter } from "./routers/checkpoints";
import { consentRouter } from "./routers/consent";
import { familiesRouter } from "./routers/families";
import { hoursRouter } from "./routers/hours";
import { invitationsRouter } from "./routers/invitations";
import { noticesRouter } from "./routers/notices";
import { peopleRouter } from "./routers/people";
import { ratesRouter } from "./routers/rates";
import { sitesRouter } from "./routers/sites";
import { router } from "./trpc";

/** Every procedure of the academy, one router a capability. */
export const appRouter = router({
  people: peopleRouter,
  notices: noticesRouter,
  invitations: invitationsRouter,
  families: familiesRouter,
  consent: consentRouter,
  sites: sitesRouter,
  rates: ratesRouter,
  hours: hoursRouter,
  checkpoints: checkpointsRouter,
  academy: academyRouter,
  account: accountRouter,
});

export type AppRouter = typeof appRouter;
