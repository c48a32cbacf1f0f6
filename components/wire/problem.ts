import { TRPCClientError } from "@trpc/client";
import type { AppRouter } from "@/server/api/root";
import type { RefusalDetail } from "@/server/domain/errors/refusal";

/** What a person is told when something did not work, and what a screen needs to help. */
export interface Problem {
  sentence: string;
  refusal: RefusalDetail | null;
  /** Field path -> what it should be. */
  fields: Record<string, string>;
}

const OFFLINE =
  "The academy cannot be reached. What you entered is still on this page. Check the connection and try again.";

/** Reads any thrown thing as a problem in words. */
export function problemOf(error: unknown): Problem {
  if (error instanceof TRPCClientError) {
    const wired = error as TRPCClientError<AppRouter>;
    if (!wired.data) return { sentence: OFFLINE, refusal: null, fields: {} };
    const fields = wired.data.fields ?? [];
    return {
      sentence: wired.message,
      refusal: wired.data.refusal,
      fields: Object.fromEntries(fields.map((field) => [field.path, field.message])),
    };
  }
  const sentence = error instanceof Error && error.message ? error.message : OFFLINE;
  return { sentence, refusal: null, fields: {} };
}
