import { accountRouter } from "./routers/account";
import { router } from "./trpc";

/** Every procedure of the academy, one router a capability. */
export const appRouter = router({
  account: accountRouter,
});

export type AppRouter = typeof appRouter;
