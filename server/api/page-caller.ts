import "server-only";
import { TRPCError } from "@trpc/server";
import { notFound, redirect } from "next/navigation";
import { cache } from "react";
import { pageFault } from "./page-fault";
import { requestContext } from "./request-context";
import { appRouter } from "./root";
import { createCallerFactory } from "./trpc";

const createCaller = createCallerFactory(appRouter);

const contextOnce = cache(requestContext);

/** The caller of this page's procedures; one context a request. */
export async function pageCaller() {
  return createCaller(await contextOnce());
}

/** The person behind this page, or null. */
export async function pageActor() {
  return (await contextOnce()).actor;
}

/** The time this page is drawn at, in epoch milliseconds. */
export async function pageNowMs(): Promise<number> {
  return (await contextOnce()).nowMs;
}

/**
 * Awaits what a page reads: not signed in leads to the sign-in page, what is not there (or not this caller's) to the
 * not-found page, anything else to the page of last resort with the number it is logged under.
 */
export async function read<Answer>(
  ask: (caller: Awaited<ReturnType<typeof pageCaller>>) => Promise<Answer>,
): Promise<Answer> {
  try {
    return await ask(await pageCaller());
  } catch (error) {
    if (error instanceof TRPCError && error.code === "UNAUTHORIZED") redirect("/sign-in");
    if (error instanceof TRPCError && (error.code === "NOT_FOUND" || error.code === "BAD_REQUEST"))
      notFound();
    throw pageFault(error);
  }
}
