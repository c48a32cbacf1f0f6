import { z } from "zod";
import { athleteScope } from "@/server/data/access";
import { armsOf } from "@/server/data/arms";
import { guardiansOf } from "@/server/data/athlete-records";
import { athletesNamed, listAthletes } from "@/server/data/athletes";
import { fullName, THROWING_HANDS } from "@/server/domain/people/person";
import { ageOn, dayOf } from "@/server/domain/time/calendar-day";
import { answerFor, armAnswer } from "../arm-answer";
import { query } from "../procedures";
import { seasonFor, seasonView } from "../season-view";
import { router } from "../trpc";

const listed = z.strictObject({
  athleteId: z.string(),
  name: z.string(),
  ageYears: z.int(),
  throws: z.enum(THROWING_HANDS),
  coachPersonId: z.string().nullable(),
  coachName: z.string().nullable(),
  openCorrections: z.int(),
  arm: armAnswer,
  lastClipOn: z.string().nullable(),
});

/** How many names a search answers with. */
const SEARCH_LIMIT = 8;

export const athletesRouter = router({
  /** Every athlete who has not left, by family name, with how the arm stands today. */
  list: query({
    action: "throwing.staffView",
    input: z.strictObject({}),
    output: z.strictObject({ myPersonId: z.string(), athletes: z.array(listed) }),
    async run({ db, nowMs, actor }) {
      const rows = await listAthletes(db, nowMs);
      const arms = await armsOf(
        db,
        rows.map((row) => row.athleteId),
        nowMs,
      );
      const athletes = rows.flatMap((row) => {
        const arm = arms.get(row.athleteId);
        return arm ? [{ ...asListed(row, nowMs), arm: answerFor({ ...arm, day: arm.today }) }] : [];
      });
      return { myPersonId: actor.personId, athletes };
    },
  }),

  /** Athletes by part of their name, a handful at most. */
  search: query({
    action: "people.staffView",
    input: z.strictObject({ text: z.string().max(80) }),
    output: z.array(
      z.strictObject({ athleteId: z.string(), name: z.string(), coachName: z.string().nullable() }),
    ),
    async run({ db, nowMs }, { text }) {
      const rows = await athletesNamed(db, text, { limit: SEARCH_LIMIT, nowMs });
      return rows.map((row) => ({
        athleteId: row.athleteId,
        name: fullName(row),
        coachName: coachNameOf(row),
      }));
    },
  }),

  /** Twelve months of an athlete: rounds, corrections, judgements, sessions, outings and throws. */
  season: query({
    action: "athlete.view",
    input: z.strictObject({ athleteId: z.string().min(1).max(60) }),
    output: seasonView,
    athlete: (db, input) => athleteScope(db, input.athleteId),
    run: (scope) => seasonFor(scope),
  }),

  /** Who stands for an athlete and how they are reached; for staff alone. */
  guardians: query({
    action: "people.staffView",
    input: z.strictObject({ athleteId: z.string().min(1).max(60) }),
    output: z.array(
      z.strictObject({
        personId: z.string(),
        name: z.string(),
        email: z.string().nullable(),
        phone: z.string().nullable(),
      }),
    ),
    athlete: (db, input) => athleteScope(db, input.athleteId),
    async run({ db, athlete }) {
      const rows = await guardiansOf(db, athlete.athleteId);
      return rows.map(({ personId, email, phone, ...names }) => ({
        personId,
        name: fullName(names),
        email,
        phone,
      }));
    },
  }),
});

type Row = Awaited<ReturnType<typeof listAthletes>>[number];

function asListed(row: Row, nowMs: number) {
  const { athleteId, throws, coachPersonId, openCorrections, lastClipOn } = row;
  const ageYears = ageOn(row.bornOn, dayOf(nowMs, row.zone));
  const names = { name: fullName(row), coachName: coachNameOf(row) };
  return { athleteId, throws, coachPersonId, openCorrections, lastClipOn, ageYears, ...names };
}

function coachNameOf(row: { coachGivenName: string | null; coachFamilyName: string | null }): string | null {
  if (row.coachGivenName === null) return null;
  return fullName({ givenName: row.coachGivenName, familyName: row.coachFamilyName ?? "" });
}
