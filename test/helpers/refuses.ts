import { expect } from "vitest";
import type { RefusalReason } from "@/server/domain/errors/refusal";
import type { TestAcademy } from "./academy";

/** A caller of every procedure as somebody. */
export type Caller = Awaited<ReturnType<TestAcademy["as"]>>;

/** Asserts that an act is refused as described, and that no row of any table changed. */
export async function refused(
  academy: TestAcademy,
  act: () => Promise<unknown>,
  refusal: object,
): Promise<void> {
  const before = academy.snapshot();
  await expect(act()).rejects.toMatchObject(refusal);
  expect(academy.snapshot()).toBe(before);
}

/** The same of an act by somebody, or by nobody. */
export async function refuses(
  academy: TestAcademy,
  personId: string | null,
  act: (api: Caller) => Promise<unknown>,
  refusal: object,
): Promise<void> {
  const api = await academy.as(personId);
  await refused(academy, () => act(api), refusal);
}

/** What a refusal for a reason looks like to a caller. */
export function because(reason: RefusalReason, facts: object = {}) {
  return { cause: { detail: { reason, ...facts } } };
}
