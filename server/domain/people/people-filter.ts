import { z } from "zod";

/** What the list of people can be narrowed to; a person may be several. */
export const PERSON_KINDS = ["athlete", "guardian", "coach", "admin"] as const;

/** One of {@link PERSON_KINDS}. */
export type PersonKind = (typeof PERSON_KINDS)[number];

/** How the list of people is narrowed: part of a name or e-mail, and one kind. */
export const peopleFilter = z.strictObject({
  search: z.string().trim().max(80),
  kind: z.enum(PERSON_KINDS).nullable(),
});

/** See {@link peopleFilter}. */
export type PeopleFilter = z.output<typeof peopleFilter>;

/** Where a person's sign-in stands: nobody invited them, invited and not joined, joined, or disabled by an admin. */
export const SIGN_IN_STATES = ["none", "invited", "joined", "disabled"] as const;

/** One of {@link SIGN_IN_STATES}. */
export type SignInState = (typeof SIGN_IN_STATES)[number];

/**
 * Where a sign-in stands by what is kept of the account; null is no account.
 * @example signInState({ hasJoined: true, isDisabled: true }) // "disabled"
 */
export function signInState(account: { hasJoined: boolean; isDisabled: boolean } | null): SignInState {
  if (account === null) return "none";
  if (account.isDisabled) return "disabled";
  return account.hasJoined ? "joined" : "invited";
}
