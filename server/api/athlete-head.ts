import { z } from "zod";
import { athleteCard } from "@/server/data/season";
import { hasLeft } from "@/server/domain/people/leaving";
import { fullName, isOfAge, THROWING_HANDS } from "@/server/domain/people/person";
import { ageOn } from "@/server/domain/time/calendar-day";
import type { Scope } from "./context";

/** Who an athlete is, as everybody who may see them sees it. */
export const athleteHead = z.strictObject({
  athleteId: z.string(),
  givenName: z.string(),
  name: z.string(),
  ageYears: z.int(),
  isOfAge: z.boolean(),
  throws: z.enum(THROWING_HANDS),
  siteName: z.string(),
  zone: z.string(),
  coachName: z.string().nullable(),
  /** Whether the athlete has left the academy by today. */
  hasLeft: z.boolean(),
});

/** Reads the head of the athlete in hand. */
export async function headOf({ db, athlete, today }: Scope): Promise<z.output<typeof athleteHead>> {
  const card = await athleteCard(db, athlete.athleteId);
  const { athleteId, givenName, throws, siteName, zone } = card;
  const coachName =
    card.coachGivenName === null
      ? null
      : fullName({ givenName: card.coachGivenName, familyName: card.coachFamilyName ?? "" });
  return {
    athleteId,
    givenName,
    name: fullName(card),
    ageYears: ageOn(card.bornOn, today),
    isOfAge: isOfAge(card.bornOn, today),
    throws,
    siteName,
    zone,
    coachName,
    hasLeft: hasLeft(card.leftOn, today),
  };
}
