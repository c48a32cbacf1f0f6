import type { TestAcademy } from "./academy";

type Call = (input: unknown) => Promise<unknown>;

/** Calls a procedure by its path, such as `rounds.take`, as a person (null: nobody). */
export async function callByPath(
  academy: TestAcademy,
  personId: string | null,
  path: string,
  input: unknown,
  requestId?: string,
): Promise<unknown> {
  const caller = (await academy.as(personId, requestId)) as unknown as Record<string, Record<string, Call>>;
  const [capability = "", act = ""] = path.split(".");
  const call = caller[capability]?.[act];
  if (!call) throw new Error(`There is no procedure ${path}.`);
  return call(input);
}
