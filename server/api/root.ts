import { academyRouter } from "./routers/academy";
import { accountRouter } from "./routers/account";
import { checkpointsRouter } from "./routers/checkpoints";
import { hoursRouter } from "./routers/hours";
import { ratesRouter } from "./routers/rates";
import { sitesRouter } from "./routers/sites";
import { router } from "./trpc";

/** Every procedure of the academy, one router a capability. */
export const appRouter = router({
  sites: sitesRouter,
  rates: ratesRouter,
  hours: hoursRouter,
  checkpoints: checkpointsRouter,
  academy: academyRouter,
  account: accountRouter,
});

export type AppRouter = typeof appRouter;
