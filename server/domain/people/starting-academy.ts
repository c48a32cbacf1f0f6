import { z } from "zod";
import { isCurrency } from "../money/money";
import { isZone } from "../time/calendar-day";
import { emailAddress, familyName, givenName } from "./person-details";

/** The name of a site or a lane. */
export const placeName = z.string().trim().min(1, "Enter a name.").max(60);

/** An IANA time zone that this machine knows, such as "America/New_York". */
export const timeZone = z.string().max(60).refine(isZone, "Choose a time zone, such as America/New_York.");

/** A currency that this machine knows, as its ISO 4217 letters. */
export const currencyCode = z
  .string()
  .max(3)
  .refine(isCurrency, "Enter a currency as three letters, such as USD.");

/** What the first visit to an empty academy asks: its name, its first site and the first admin. */
export const startingAcademy = z.strictObject({
  academyName: z.string().trim().min(1, "Enter the academy’s name.").max(80),
  currency: currencyCode,
  siteName: placeName,
  zone: timeZone,
  givenName,
  familyName,
  email: emailAddress,
  /** Whether the first admin coaches as well. */
  isCoach: z.boolean(),
});

/** See {@link startingAcademy}. */
export type StartingAcademy = z.output<typeof startingAcademy>;
