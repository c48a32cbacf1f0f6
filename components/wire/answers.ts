import type { inferRouterOutputs } from "@trpc/server";
import type { AppRouter } from "@/server/api/root";

/** What each procedure answers: `Answers["people"]["list"]`. */
export type Answers = inferRouterOutputs<AppRouter>;
