import { z } from "zod";
import { athleteScope } from "@/server/data/access";
import { armOf } from "@/server/data/arms";
import { tellOfSessionsWithoutRoom } from "@/server/data/flag-sessions";
import { insertPainClearance, tellOfClearance, tellOfPain } from "@/server/data/pain";
import { findPerson } from "@/server/data/people";
import { keepRemark } from "@/server/data/remarks";
import { insertPainReport, insertThrowEntry } from "@/server/data/throw-log";
import {
  cancelOuting,
  findThrowEntry,
  insertOuting,
  outingScope,
  throwEntryScope,
} from "@/server/data/throwing-log";
import { Refusal } from "@/server/domain/errors/refusal";
import { fullName } from "@/server/domain/people/person";
import { clearanceRefusals, EXAMINED_BY_MAX_LENGTH, PAIN_KINDS } from "@/server/domain/throwing/pain";
import { outingProblem } from "@/server/domain/throwing/planned-outing";
import { clearanceRefusalInWords, entryRefusalInWords } from "@/server/domain/throwing/refusal-in-words";
import { THROW_KINDS } from "@/server/domain/throwing/throw-entry";
import { entryRefusals, PLAUSIBLE_MAX_PITCHES } from "@/server/domain/throwing/validate-entry";
import { answerFor, armAnswer } from "../arm-answer";
import type { Scope } from "../context";
import { DONE, done } from "../done";
import { command, query } from "../procedures";
import { mayCorrect, throwingView, throwingViewFor } from "../throwing-view";
import { router } from "../trpc";

const id = z.string().min(1).max(60);
const day = z.iso.date();
const note = z.string().max(1000).optional();
const thrown = {
  thrownOn: day,
  kind: z.enum(THROW_KINDS),
  pitches: z.int().min(0).max(PLAUSIBLE_MAX_PITCHES),
};
const logged = z.strictObject({ entryId: z.string(), arm: armAnswer });

const ofAthlete = (db: Scope["db"], input: { athleteId: string }) => athleteScope(db, input.athleteId);

export const throwingRouter = router({
  /** What the book leaves this arm today and why, pain, the log, the outings ahead, the year by weeks. */
  view: query({
    action: "throwing.view",
    input: z.strictObject({ athleteId: id }),
    output: throwingView,
    athlete: ofAthlete,
    run: (scope) => throwingViewFor(scope),
  }),

  /** Writes throws of today or an earlier day; 0 says that nothing was thrown. */
  log: command({
    action: "throwing.log",
    input: z.strictObject({ athleteId: id, ...thrown, note }),
    output: logged,
    athlete: ofAthlete,
    run: (scope, { note: words, athleteId, ...entry }) => append(scope, { ...entry, athleteId, words }),
  }),

  /** Corrects an entry by a new row; the old one stays on record. */
  correct: command({
    action: "throwing.log",
    input: z.strictObject({ entryId: id, ...thrown, note }),
    output: logged,
    athlete: (db, input) => throwEntryScope(db, input.entryId),
    async run(scope, { entryId, note: words, ...entry }) {
      const before = await findThrowEntry(scope.db, entryId);
      if (!before) throw new Refusal({ reason: "not_found" });
      if (before.isReplaced) throw new Refusal({ reason: "already_corrected" });
      if (!mayCorrect(scope, before))
        throw new Refusal({ reason: "throw_entry_invalid", why: LOGGED_BY_COACH });
      const { athleteId, sessionId, clipId } = before;
      return append(scope, { ...entry, athleteId, words, sessionId, clipId, replacesId: entryId });
    },
  }),

  /** Plans a game or showcase, so that the days before it keep room. */
  planOuting: command({
    action: "throwing.log",
    input: z.strictObject({
      athleteId: id,
      plannedOn: day,
      pitches: z.int().min(1).max(PLAUSIBLE_MAX_PITCHES),
    }),
    output: z.strictObject({ outingId: z.string() }),
    athlete: ofAthlete,
    async run({ db, actor, nowMs, today }, input) {
      const why = outingProblem(input, { today, plausibleMaxPitches: PLAUSIBLE_MAX_PITCHES });
      if (why) throw new Refusal({ reason: "throw_entry_invalid", why });
      const outingId = await insertOuting(db, {
        ...input,
        addedByPersonId: actor.personId,
        addedAtMs: nowMs,
      });
      await tellOfSessionsWithoutRoom(db, input.athleteId, nowMs);
      return { outingId };
    },
  }),

  /** Calls a planned outing off. */
  cancelOuting: command({
    action: "throwing.log",
    input: z.strictObject({ outingId: id }),
    output: done,
    athlete: (db, input) => outingScope(db, input.outingId),
    async run({ db, nowMs }, input) {
      await cancelOuting(db, input.outingId, nowMs);
      return DONE;
    },
  }),

  /** Stops all throwing: tells guardians and coach, and names the booked sessions that can no longer be thrown. */
  reportPain: command({
    action: "pain.report",
    input: z.strictObject({ athleteId: id, kind: z.enum(PAIN_KINDS), feltOn: day, note }),
    output: done,
    athlete: ofAthlete,
    async run(scope, { note: words, ...pain }) {
      const { db, actor, nowMs } = scope;
      refuseBadDay(scope, pain.feltOn);
      const remarkId = await keepRemark(db, words);
      const reportedByPersonId = actor.personId;
      await insertPainReport(db, { ...pain, remarkId, reportedByPersonId, reportedAtMs: nowMs });
      await tellOfPain(db, { ...pain, byName: await callerName(scope) }, nowMs);
      await tellOfSessionsWithoutRoom(db, pain.athleteId, nowMs);
      return DONE;
    },
  }),

  /** Ends the stop: the guardian of a minor, an athlete of age for themselves, and nobody else. */
  clearPain: command({
    action: "pain.clear",
    input: z.strictObject({
      athleteId: id,
      symptomFreeSince: day,
      examinedBy: z.string().max(EXAMINED_BY_MAX_LENGTH),
    }),
    output: done,
    athlete: ofAthlete,
    async run(scope, input) {
      const { db, actor, nowMs } = scope;
      await refuseBadClearance(scope, input);
      const { athleteId, symptomFreeSince } = input;
      const examinedByRemarkId = (await keepRemark(db, input.examinedBy)) ?? "";
      const clearedByPersonId = actor.personId;
      const row = { athleteId, symptomFreeSince, examinedByRemarkId, clearedByPersonId, clearedAtMs: nowMs };
      await insertPainClearance(db, row);
      await tellOfClearance(db, { athleteId, symptomFreeSince, byName: await callerName(scope) }, nowMs);
      return DONE;
    },
  }),
});

const LOGGED_BY_COACH = "This was logged with a session: ask the coach to correct it.";

interface Appended {
  athleteId: string;
  thrownOn: string;
  kind: (typeof THROW_KINDS)[number];
  pitches: number;
  words: string | undefined;
  sessionId?: string | null;
  clipId?: string | null;
  replacesId?: string;
}

/** Writes one row of the log, names the booked sessions it leaves without room, and answers with how the arm stands. */
async function append(scope: Scope, { words, ...entry }: Appended): Promise<z.output<typeof logged>> {
  const { db, actor, nowMs, athlete, today } = scope;
  const bounds = { bornOn: athlete.bornOn, today, plausibleMaxPitches: PLAUSIBLE_MAX_PITCHES };
  const [refusal] = entryRefusals(entry, bounds);
  if (refusal) throw new Refusal({ reason: "throw_entry_invalid", why: entryRefusalInWords(refusal) });
  const remarkId = await keepRemark(db, words);
  const reportedByPersonId = actor.personId;
  const entryId = await insertThrowEntry(db, { ...entry, remarkId, reportedByPersonId, reportedAtMs: nowMs });
  await tellOfSessionsWithoutRoom(db, entry.athleteId, nowMs);
  const arm = await armOf(db, entry.athleteId, nowMs);
  return { entryId, arm: answerFor({ ...arm, day: today }) };
}

/** A day that pain was felt on is held against the same bounds as a day of throws. */
function refuseBadDay({ athlete, today }: Scope, feltOn: string): void {
  const bounds = { bornOn: athlete.bornOn, today, plausibleMaxPitches: PLAUSIBLE_MAX_PITCHES };
  const [refusal] = entryRefusals({ thrownOn: feltOn, pitches: 0 }, bounds);
  if (refusal) throw new Refusal({ reason: "throw_entry_invalid", why: entryRefusalInWords(refusal) });
}

async function refuseBadClearance(
  scope: Scope,
  clearance: { athleteId: string; symptomFreeSince: string; examinedBy: string },
): Promise<void> {
  const { db, nowMs, today } = scope;
  const { pain } = await armOf(db, clearance.athleteId, nowMs);
  /* Another guardian was quicker: there is nothing left to clear. */
  if (!pain) throw new Refusal({ reason: "changed_meanwhile" });
  const [refusal] = clearanceRefusals(clearance, pain, today);
  if (refusal) refuse(clearanceRefusalInWords(refusal));
}

function refuse(why: string): never {
  throw new Refusal({ reason: "pain_clearance_invalid", why });
}

async function callerName({ db, actor }: Scope): Promise<string> {
  const card = await findPerson(db, actor.personId);
  return card ? fullName(card) : actor.givenName;
}
