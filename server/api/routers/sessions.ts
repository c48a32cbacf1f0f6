import { z } from "zod";
import { athleteScope } from "@/server/data/access";
import { armsOf } from "@/server/data/arms";
import { stayOf } from "@/server/data/leaving";
import { changeSession, comingSessionsOf, sessionScopes } from "@/server/data/sessions";
import { may } from "@/server/domain/access/rights";
import { hasLeft } from "@/server/domain/people/leaving";
import { DONE, done } from "../done";
import { noteAct } from "../note-act";
import { command, query } from "../procedures";
import { bookSession, moveBooked, sessionOrRefuse } from "../sessions/book-session";
import { checkInAthlete, checkInInput } from "../sessions/check-in-athlete";
import { cancelSession, giveUpPlace } from "../sessions/give-up-place";
import { locateAll, locateOnSession } from "../sessions/locate-athletes";
import { logInput, logSession } from "../sessions/log-session";
import { planning, planningFor } from "../sessions/planning";
import { searchTimes } from "../sessions/search-times";
import {
  armNow,
  bookInput,
  findInput,
  findOutput,
  moveInput,
  reasonText,
  rowId,
  sessionHead,
} from "../sessions/session-shapes";
import {
  familyView,
  headOf,
  shownNow,
  staffView,
  viewForFamily,
  viewForStaff,
} from "../sessions/session-views";
import { stepOrRefuse } from "../sessions/step-or-refuse";
import { router } from "../trpc";

const version = z.int().min(1);
const ending = z.strictObject({ sessionId: rowId, version, reason: reasonText });

export const sessionsRouter = router({
  /** What a booking is made from: who, what to confirm, who may watch, where and with whom. */
  planning: query({
    action: "calendar.findTimes",
    input: z.strictObject({ athleteIds: z.array(rowId).min(1).max(8), roundId: rowId.nullable() }),
    output: planning,
    athlete: (db, input) => locateAll(db, input.athleteIds),
    run: planningFor,
  }),

  /** The times that fit coach, lane, athletes and arms, best first, and the days an arm stops. */
  findTimes: query({
    action: "calendar.findTimes",
    input: findInput,
    output: findOutput,
    athlete: (db, input) => locateAll(db, input.athleteIds),
    run: searchTimes,
  }),

  /** Books a session, or says what speaks against it. */
  book: command({
    action: "session.book",
    input: bookInput,
    output: z.strictObject({ sessionId: z.string() }),
    athlete: (db, input) =>
      locateAll(
        db,
        input.athletes.map((one) => one.athleteId),
      ),
    run: async (scope, input) => ({ sessionId: await bookSession(scope, input) }),
  }),

  /** Moves a session, or plans it anew where it is. */
  move: command({
    action: "session.change",
    input: moveInput,
    output: done,
    athlete: (db, input) => sessionScopes(db, input.sessionId),
    async run(scope, input) {
      await moveBooked(scope, input);
      return DONE;
    },
  }),

  /** Cancels a session, with the reason that everybody is told. */
  cancel: command({
    action: "session.change",
    input: ending,
    output: done,
    athlete: (db, input) => sessionScopes(db, input.sessionId),
    async run(scope, input) {
      await cancelSession(scope, input);
      return DONE;
    },
  }),

  /** Gives up one athlete's place; the session goes on for the others. */
  giveUpPlace: command({
    action: "session.change",
    input: ending.extend({ athleteId: rowId }),
    output: done,
    athlete: locateOnSession,
    async run(scope, input) {
      await giveUpPlace(scope, input);
      return DONE;
    },
  }),

  /** A session that was to be held, and nobody came. */
  markNoShow: command({
    action: "session.run",
    input: z.strictObject({ sessionId: rowId, version }),
    output: done,
    athlete: (db, input) => sessionScopes(db, input.sessionId),
    async run(scope, input) {
      const card = await sessionOrRefuse(scope, input.sessionId);
      const state = stepOrRefuse(card, "mark_no_show", scope.nowMs);
      await changeSession(scope.db, { id: card.id, version: input.version }, { state });
      await noteAct(scope, "session.no_show", card.id);
      return DONE;
    },
  }),

  /** What was thrown since, and whether anything hurts: asked before mound work. */
  checkIn: command({
    action: "session.run",
    input: checkInInput,
    output: z.strictObject({ sessionsWithoutRoom: z.number() }),
    athlete: locateOnSession,
    run: async (scope, input) => ({ sessionsWithoutRoom: await checkInAthlete(scope, input) }),
  }),

  /** What was done: throws, corrections and charges in one stroke. */
  log: command({
    action: "session.run",
    input: logInput,
    output: done,
    athlete: (db, input) => sessionScopes(db, input.sessionId),
    async run(scope, input) {
      await logSession(scope, input);
      return DONE;
    },
  }),

  /** A session as staff work on it. */
  forStaff: query({
    action: "session.staffView",
    input: z.strictObject({ sessionId: rowId }),
    output: staffView,
    athlete: (db, input) => sessionScopes(db, input.sessionId),
    run: async (scope, input) => viewForStaff(scope, await sessionOrRefuse(scope, input.sessionId)),
  }),

  /** A session as one athlete's family sees it. */
  forFamily: query({
    action: "session.view",
    input: z.strictObject({ sessionId: rowId, athleteId: rowId }),
    output: familyView,
    athlete: locateOnSession,
    async run(scope, input) {
      const card = await sessionOrRefuse(scope, input.sessionId);
      return viewForFamily(scope, card, may("session.change", scope.relations));
    },
  }),

  /** An athlete's sessions to come, earliest first, and whether the caller may book. */
  coming: query({
    action: "session.view",
    input: z.strictObject({ athleteId: rowId }),
    output: z.strictObject({
      mayBook: z.boolean(),
      hasLeft: z.boolean(),
      sessions: z.array(
        z.strictObject({ head: sessionHead, plannedPitches: z.number(), now: armNow.nullable() }),
      ),
    }),
    athlete: (db, input) => athleteScope(db, input.athleteId),
    async run({ db, nowMs, today, relations }, { athleteId }) {
      const arm = (await armsOf(db, [athleteId], nowMs)).get(athleteId);
      const sessions = (await comingSessionsOf(db, athleteId, nowMs)).map((card) => ({
        head: headOf(card),
        plannedPitches: card.athletes.find((one) => one.athleteId === athleteId)?.plannedPitches ?? 0,
        now: arm ? shownNow(arm, card.id, athleteId) : null,
      }));
      const isGone = hasLeft((await stayOf(db, athleteId))?.leftOn ?? null, today);
      return { mayBook: may("session.book", relations) && !isGone, hasLeft: isGone, sessions };
    },
  }),
});
