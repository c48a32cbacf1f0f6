import { expect, it } from "vitest";
import { peopleFilter, signInState } from "@/server/domain/people/people-filter";

it.each([
  [null, "none"],
  [{ hasJoined: false, isDisabled: false }, "invited"],
  [{ hasJoined: true, isDisabled: false }, "joined"],
  [{ hasJoined: true, isDisabled: true }, "disabled"],
  [{ hasJoined: false, isDisabled: true }, "disabled"],
])("says where a sign-in stands: %o is %s", (account, state) => {
  expect(signInState(account)).toBe(state);
});

it("takes a search of 80 characters and no more", () => {
  expect(peopleFilter.safeParse({ search: "a".repeat(80), kind: null }).success).toBe(true);
  expect(peopleFilter.safeParse({ search: "a".repeat(81), kind: null }).success).toBe(false);
});
