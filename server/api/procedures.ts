import type { z } from "zod";
import type { Db } from "@/db/client";
import { unitOfWork } from "@/server/data/unit-of-work";
import { type Actor, type AthleteScope, relationsOf } from "@/server/domain/access/relation";
import { type Action, may } from "@/server/domain/access/rights";
import { Refusal } from "@/server/domain/errors/refusal";
import { dayOf } from "@/server/domain/time/calendar-day";
import { answerOnce, earlierAnswer } from "./answer-once";
import type { Context, OpenScope, Scope } from "./context";
import { asWireError } from "./refusal-codes";
import { baseProcedure } from "./trpc";

/** Finds the athlete (or all athletes) an input is about; null when there is no such thing. */
export type Locate<Input> = (db: Db, input: Input) => Promise<AthleteScope | readonly AthleteScope[] | null>;

interface Definition<In extends z.ZodType, Out extends z.ZodType, On, Prepared = undefined> {
  action: Action;
  input: In;
  output: Out;
  /** Given when the action is about an athlete: the right is checked for each one found. */
  athlete?: Locate<z.output<In>>;
  /** Slow work before the transaction, such as hashing a password; it must write nothing. */
  prepare?: (input: z.output<In>, context: Context) => Promise<Prepared>;
  run: (scope: On, input: z.output<In>, prepared: Prepared) => Promise<z.input<Out>>;
  /** For an answer that holds a secret: what is kept of it, and what a repeat is answered with. */
  kept?: (answer: z.input<Out>) => z.input<Out>;
}

/** A procedure that reads. The caller must be signed in and hold a relation that may do the action. */
export function query<In extends z.ZodType, Out extends z.ZodType>(definition: Definition<In, Out, Scope>) {
  return declared(definition).query(({ ctx, input }) =>
    wired(async () => {
      const parsed = input as z.output<In>;
      const scope = await authorise(definition, ctx, ctx.connections.reader, parsed);
      return (await definition.run(scope, parsed, undefined)) as never;
    }),
  );
}

/** A procedure that writes: one unit of work; a repeat of the same request is answered as before and changes nothing. */
export function command<In extends z.ZodType, Out extends z.ZodType, Prepared = undefined>(
  definition: Definition<In, Out, Scope, Prepared>,
) {
  return declared(definition).mutation(({ ctx, input, path }) =>
    wired(async () => {
      const parsed = input as z.output<In>;
      const sent = { context: ctx, path, input: parsed };
      await authorise(definition, ctx, ctx.connections.reader, parsed);
      const before = await earlierAnswer<never>(ctx.connections.reader, sent);
      if (before) return before.answer;
      const prepared = (await definition.prepare?.(parsed, ctx)) as Prepared;
      return unitOfWork(ctx.connections, async (tx) => {
        const scope = await authorise(definition, ctx, tx, parsed);
        const work = async () => whole(definition, await definition.run(scope, parsed, prepared));
        return answerOnce(tx, sent, work, definition.kept as ((answer: never) => never) | undefined);
      });
    }),
  );
}

/** A reading procedure open to callers who are not signed in. */
export function openQuery<In extends z.ZodType, Out extends z.ZodType>(
  definition: Omit<Definition<In, Out, OpenScope>, "athlete">,
) {
  return declared(definition).query(({ ctx, input }) =>
    wired(async () => {
      const scope = openScope(ctx, ctx.connections.reader);
      return (await definition.run(scope, input as z.output<In>, undefined)) as never;
    }),
  );
}

/** A writing procedure open to callers who are not signed in. */
export function openCommand<In extends z.ZodType, Out extends z.ZodType, Prepared = undefined>(
  definition: Omit<Definition<In, Out, OpenScope, Prepared>, "athlete">,
) {
  return declared(definition).mutation(({ ctx, input, path }) =>
    wired(async () => {
      const parsed = input as z.output<In>;
      const sent = { context: ctx, path, input: parsed };
      const before = await earlierAnswer<never>(ctx.connections.reader, sent);
      if (before) return before.answer;
      const prepared = (await definition.prepare?.(parsed, ctx)) as Prepared;
      return unitOfWork(ctx.connections, (tx) =>
        answerOnce(tx, sent, async () =>
          whole(definition, await definition.run(openScope(ctx, tx), parsed, prepared)),
        ),
      );
    }),
  );
}

function declared<In extends z.ZodType, Out extends z.ZodType>(definition: {
  action: Action;
  input: In;
  output: Out;
  athlete?: unknown;
}) {
  return baseProcedure
    .meta({ action: definition.action, aboutAthlete: definition.athlete !== undefined })
    .input(definition.input)
    .output(definition.output);
}

/** The answer as the wire will carry it, held to its shape while what was written can still be taken back. */
function whole<Out extends z.ZodType>({ output }: { output: Out }, answer: z.input<Out>): never {
  return output.parse(answer) as never;
}

function openScope(context: Context, db: Db): OpenScope {
  return { db, actor: context.actor, nowMs: context.nowMs, address: context.address };
}

/** Refuses unless the caller may do the action to every athlete the input is about. */
export async function authorise<Input>(
  definition: { action: Action; athlete?: Locate<Input> },
  context: Context,
  db: Db,
  input: Input,
): Promise<Scope> {
  const { actor, nowMs } = context;
  if (!actor) throw new Refusal({ reason: "not_signed_in" });
  if (!definition.athlete) {
    const relations = relationsOf(actor, null, dayOf(nowMs, "UTC"));
    if (!may(definition.action, relations)) throw new Refusal({ reason: "not_found" });
    return withoutAthlete({ db, actor, nowMs, relations });
  }
  const located = await definition.athlete(db, input);
  const athletes = located === null ? [] : [located].flat();
  const scopes = athletes.map((athlete) => athleteScopeFor(actor, athlete, nowMs, db));
  const first = scopes[0];
  if (!first || scopes.some((scope) => !may(definition.action, scope.relations))) {
    throw new Refusal({ reason: "not_found" });
  }
  return first;
}

function athleteScopeFor(actor: Actor, athlete: AthleteScope, nowMs: number, db: Db): Scope {
  const today = dayOf(nowMs, athlete.zone);
  return { db, actor, nowMs, athlete, today, relations: relationsOf(actor, athlete, today) };
}

function withoutAthlete(scope: Omit<Scope, "athlete" | "today">): Scope {
  const missing = (): never => {
    throw new Error("This procedure names no athlete.");
  };
  return Object.defineProperties({ ...scope } as Scope, {
    athlete: { get: missing },
    today: { get: missing },
  });
}

async function wired<Answer>(work: () => Promise<Answer>): Promise<Answer> {
  try {
    return await work();
  } catch (error) {
    throw asWireError(error);
  }
}
