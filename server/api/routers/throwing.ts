import { z } from "zod";
import { athleteScope } from "@/server/data/access";
import { armOf } from "@/server/data/arms";
import { tellOfSessionsWithoutRoom } from "@/server/data/flag-sessions";
import { insertPainClearance, tellOfClearance } from "@/server/data/pain";
import { keepRemark } from "@/server/data/remarks";
import { teamsOf } from "@/server/data/teams";
import {
  cancelOuting,
  entryByImportKey,
  findThrowEntry,
  insertOuting,
  outingScope,
  throwEntryScope,
} from "@/server/data/throwing-log";
import { Refusal } from "@/server/domain/errors/refusal";
import { keptKeyOf } from "@/server/domain/throwing/import-key";
import { clearanceRefusals, EXAMINED_BY_MAX_LENGTH, PAIN_KINDS } from "@/server/domain/throwing/pain";
import { outingProblem } from "@/server/domain/throwing/planned-outing";
import { clearanceRefusalInWords } from "@/server/domain/throwing/refusal-in-words";
import { teamProblem } from "@/server/domain/throwing/team";
import { PLAUSIBLE_MAX_PITCHES } from "@/server/domain/throwing/validate-entry";
import { answerFor, armAnswer } from "../arm-answer";
import type { Scope } from "../context";
import { DONE, done } from "../done";
import { command, query } from "../procedures";
import { appendThrows, type TakenThrows } from "../throwing/append-throws";
import { mayCorrect } from "../throwing/log-answer";
import { saidInput, saidOn } from "../throwing/said-on";
import { callerName, stopForPain } from "../throwing/stop-for-pain";
import { painInput, throwsInput } from "../throwing/throws-input";
import { throwingView, throwingViewFor } from "../throwing-view";
import { router } from "../trpc";

const id = z.string().min(1).max(60);
const day = z.iso.date();
const note = z.string().max(1000).optional();
const pain = painInput.nullable().default(null);
const loggedAnswer = z.strictObject({ entryId: z.string(), arm: armAnswer });

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

  /** What the books left this arm on a day, from what was known by the end of another. */
  saidOn: query({
    action: "throwing.view",
    input: z.strictObject({ athleteId: id, ...saidInput }),
    output: armAnswer,
    athlete: ofAthlete,
    run: (scope, input) => saidOn(scope, input),
  }),

  /**
   * Writes throws of today or an earlier day, with what a game says; 0 says that nothing was thrown. Pain told with them
   * stops all throwing in the same step. What a device kept and sends again, however late, is on the log once.
   */
  log: command({
    action: "throwing.log",
    input: z.strictObject({
      athleteId: id,
      ...throwsInput,
      pain,
      note,
      keptId: z.uuid().nullable().default(null),
    }),
    output: loggedAnswer,
    athlete: ofAthlete,
    async run(scope, { athleteId, pain: told, keptId, ...entry }) {
      if (keptId === null) return log(scope, entry, told);
      const importKey = keptKeyOf(athleteId, keptId);
      const there = await entryByImportKey(scope.db, importKey);
      return there ? logged(scope, there) : log(scope, { ...entry, importKey }, told);
    },
  }),

  /** Corrects an entry by a new row; the old one stays on record. */
  correct: command({
    action: "throwing.log",
    input: z.strictObject({ entryId: id, ...throwsInput, note }),
    output: loggedAnswer,
    athlete: (db, input) => throwEntryScope(db, input.entryId),
    async run(scope, { entryId, ...entry }) {
      const before = await findThrowEntry(scope.db, entryId);
      if (!before) throw new Refusal({ reason: "not_found" });
      if (before.isReplaced) throw new Refusal({ reason: "already_corrected" });
      if (!mayCorrect(scope, before))
        throw new Refusal({ reason: "throw_entry_invalid", why: LOGGED_BY_COACH });
      const { sessionId, clipId } = before;
      return log(scope, { ...entry, sessionId, clipId, replacesId: entryId }, null);
    },
  }),

  /** Plans a game or showcase, so that the days before it keep room. */
  planOuting: command({
    action: "throwing.log",
    input: z.strictObject({
      athleteId: id,
      plannedOn: day,
      pitches: z.int().min(1).max(PLAUSIBLE_MAX_PITCHES),
      /** The team it is for; its book is weighed on that day. */
      teamId: id.nullable().default(null),
    }),
    output: z.strictObject({ outingId: z.string() }),
    athlete: ofAthlete,
    async run({ db, actor, nowMs, today }, input) {
      const bounds = { today, plausibleMaxPitches: PLAUSIBLE_MAX_PITCHES };
      const why =
        outingProblem(input, bounds) ?? teamProblem(input.teamId, await teamsOf(db, input.athleteId));
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
    async run(scope, { athleteId, note: words = "", ...felt }) {
      await stopForPain(scope, { ...felt, note: words });
      await tellOfSessionsWithoutRoom(scope.db, athleteId, scope.nowMs);
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

/** Writes one row of the log and the pain told with it, names the sessions without room, and says how the arm stands. */
async function log(
  scope: Scope,
  thrown: TakenThrows,
  told: z.output<typeof pain>,
): Promise<z.output<typeof loggedAnswer>> {
  const { db, nowMs, athlete } = scope;
  const entryId = await appendThrows(scope, thrown);
  if (told) await stopForPain(scope, told);
  await tellOfSessionsWithoutRoom(db, athlete.athleteId, nowMs);
  return logged(scope, entryId);
}

/** An entry that is on the log, and how the arm stands with it. */
async function logged(
  { db, nowMs, athlete, today }: Scope,
  entryId: string,
): Promise<z.output<typeof loggedAnswer>> {
  const arm = await armOf(db, athlete.athleteId, nowMs);
  return { entryId, arm: answerFor({ ...arm, day: today }) };
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
