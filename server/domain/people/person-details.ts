import { z } from "zod";

/** A given name as a form takes it: 1 to 60 characters, blank ends cut off. */
export const givenName = z.string().trim().min(1, "Enter a given name.").max(60);

/** A family name, likewise. */
export const familyName = z.string().trim().min(1, "Enter a family name.").max(60);

/** An e-mail address as it is kept: lower case, so that one address is one account. */
export const emailAddress = z
  .string()
  .trim()
  .toLowerCase()
  .max(200)
  .pipe(z.email("Enter an e-mail address."));

/** A telephone number as people write it: digits, spaces and + ( ) - . / only. */
export const phoneNumber = z
  .string()
  .trim()
  .max(40)
  .regex(/^\+?[\d ()./-]{5,}$/, "Enter a telephone number in digits, or leave it empty.");

/** Who somebody is and how they are reached; every address but the name may be missing. */
export const personDetails = z.strictObject({
  givenName,
  familyName,
  email: emailAddress.nullable(),
  phone: phoneNumber.nullable(),
});

/** See {@link personDetails}. */
export type PersonDetails = z.output<typeof personDetails>;

/** Somebody who stands for an athlete: a person on record, or a new one who must be reachable by e-mail. */
export const guardianChoice = z.union([
  z.strictObject({ personId: z.string().min(1).max(60) }),
  personDetails.extend({ email: emailAddress }),
]);

/** See {@link guardianChoice}. */
export type GuardianChoice = z.output<typeof guardianChoice>;
