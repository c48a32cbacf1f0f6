import { initTRPC } from "@trpc/server";
import superjson from "superjson";
import { z } from "zod";
import type { Action } from "@/server/domain/access/rights";
import { Refusal } from "@/server/domain/errors/refusal";
import type { Context } from "./context";

/** What each procedure declares of itself; the walk over all procedures reads it. */
export interface ProcedureMeta {
  action: Action;
  /** Whether the action is about an athlete named (or reached) by the input. */
  aboutAthlete: boolean;
}

const t = initTRPC
  .context<Context>()
  .meta<ProcedureMeta>()
  .create({
    transformer: superjson,
    errorFormatter({ shape, error }) {
      const refusal = error.cause instanceof Refusal ? error.cause : null;
      /* Only input is told field by field: a record or an answer that breaks its own shape is a fault. */
      const isInput = error.code === "BAD_REQUEST" && error.cause instanceof z.ZodError;
      const fields = isInput ? fieldProblems(error.cause) : null;
      return {
        ...shape,
        message:
          refusal?.message ?? (fields ? fieldSentence(fields) : plainMessage(error.code, error.message)),
        data: { ...shape.data, stack: undefined, refusal: refusal?.detail ?? null, fields },
      };
    },
  });

export const router = t.router;
export const createCallerFactory = t.createCallerFactory;
export const baseProcedure = t.procedure;

/** One input field that is not as it should be. */
export interface FieldProblem {
  path: string;
  message: string;
}

function fieldProblems(error: z.ZodError): FieldProblem[] {
  return error.issues.slice(0, 20).map((issue) => ({ path: issue.path.join("."), message: issue.message }));
}

function fieldSentence(fields: readonly FieldProblem[]): string {
  const list = fields.map((field) => (field.path ? `${field.path}: ${field.message}` : field.message));
  return `Nothing was saved. Please check ${list.join("; ")}.`;
}

function plainMessage(code: string, message: string): string {
  return code === "INTERNAL_SERVER_ERROR" ? message : `${message} Nothing was saved.`.trim();
}
