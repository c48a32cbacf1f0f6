import { z } from "zod";
import { athleteScope } from "@/server/data/access";
import type { Scope } from "../context";
import { command, query } from "../procedures";
import { addFile, fileInput, filePreview, previewFile } from "../throwing/import-throws";
import { router } from "../trpc";

const ofAthlete = (db: Scope["db"], input: { athleteId: string }) => athleteScope(db, input.athleteId);

export const throwImportRouter = router({
  /** What a file of past throwing would add, what the log holds already, and what is wrong with which line. */
  preview: query({
    action: "throwing.import",
    input: fileInput,
    output: filePreview,
    athlete: ofAthlete,
    run: (scope, input) => previewFile(scope, input),
  }),

  /** Adds what is new in the file; with wrong lines in it only when it is asked to leave those out. */
  add: command({
    action: "throwing.import",
    input: fileInput.extend({ withoutBad: z.boolean() }),
    output: z.strictObject({ added: z.int(), there: z.int(), leftOut: z.int() }),
    athlete: ofAthlete,
    run: (scope, input) => addFile(scope, input),
  }),
});
