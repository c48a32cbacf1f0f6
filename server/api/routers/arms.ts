import { z } from "zod";
import { athleteScope } from "@/server/data/access";
import { armAnswer } from "../arm-answer";
import { armCellFor } from "../arm-cell";
import { armsBoardFor, armsBoardInput, armsBoardView } from "../arms-board-view";
import { query } from "../procedures";
import { router } from "../trpc";

export const armsRouter = router({
  /** Athletes by days, two weeks back and two ahead: what was thrown, what is planned, what the book leaves. */
  board: query({
    action: "throwing.staffView",
    input: armsBoardInput,
    output: armsBoardView,
    run: (scope, input) => armsBoardFor(scope, input),
  }),

  /** Why one cell of the board says what it says. */
  cell: query({
    action: "throwing.staffView",
    input: z.strictObject({ athleteId: z.string().min(1).max(60), day: z.iso.date() }),
    output: armAnswer,
    athlete: (db, input) => athleteScope(db, input.athleteId),
    run: (scope, input) => armCellFor(scope, input.day),
  }),
});
