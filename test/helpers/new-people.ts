import { eq } from "drizzle-orm";
import { account } from "@/db/schema/people";
import { type TestAcademy, WHO } from "./academy";

/** A guardian who is not on record yet. */
export const NEW_GUARDIAN = {
  givenName: "Nell",
  familyName: "Brook",
  email: "nell@test.example",
  phone: null,
} as const;

/** An athlete of 11 who is not on record yet. */
export const NEW_ATHLETE_RECORD = {
  givenName: "Lou",
  familyName: "Brook",
  email: null,
  phone: null,
  bornOn: "2015-06-01",
  throws: "left",
  heightCm: 148,
  homeSiteId: WHO.site,
  ruleBookId: "usa-baseball-2018",
} as const;

/** The same with a coach and a guardian, as `families.addAthlete` takes it. */
export const NEW_ATHLETE = {
  ...NEW_ATHLETE_RECORD,
  coachPersonId: WHO.coach,
  guardians: [NEW_GUARDIAN],
};

/** Lets a person of the test academy have chosen a password. */
export async function letJoin(academy: TestAcademy, personId: string): Promise<void> {
  await academy.db.update(account).set({ passwordHash: "kept" }).where(eq(account.personId, personId));
}
