import { z } from "zod";
import { calendarDay } from "@/server/domain/people/athlete-record";
import { PAIN_KINDS } from "@/server/domain/throwing/pain";
import { entryRefusalInWords } from "@/server/domain/throwing/refusal-in-words";
import { THROW_KINDS } from "@/server/domain/throwing/throw-entry";
import { PLAUSIBLE_MAX_PITCHES } from "@/server/domain/throwing/validate-entry";
import { TEAM_NAME_MAX_LENGTH } from "@/server/domain/throwing/validate-game";

const NOT_WHOLE = entryRefusalInWords({ field: "pitches", reason: "not_whole" });
const NEGATIVE = entryRefusalInWords({ field: "pitches", reason: "negative" });
const IMPLAUSIBLE = entryRefusalInWords({
  field: "pitches",
  reason: "implausible",
  maxPitches: PLAUSIBLE_MAX_PITCHES,
});

/** A number of throws, with a sentence for each way in which it is none. */
export const pitchesInput = z.int(NOT_WHOLE).min(0, NEGATIVE).max(PLAUSIBLE_MAX_PITCHES, IMPLAUSIBLE);

/* No count of a game is of more digits; what a game can hold is the domain's to say. */
const count = z.int("This is a whole number.").min(0, "This cannot be below 0.").max(9999);

/** What a game says beside its pitches; whether it can be so is `gameProblem`'s to say. */
export const gameInput = z.strictObject({
  outs: count.nullable(),
  inningsCaught: count.nullable(),
  pitchesAtLastBatter: count.nullable(),
  intentionalWalks: count,
  teamId: z.string().min(1).max(60).nullable(),
  opponent: z.string().max(TEAM_NAME_MAX_LENGTH),
});

/** Pain or unusual fatigue, told in the same step as the throws. */
export const painInput = z.strictObject({
  kind: z.enum(PAIN_KINDS),
  feltOn: calendarDay,
  note: z.string().max(1000),
});

/** Throws of one day, as everybody tells them. */
export const throwsInput = {
  thrownOn: calendarDay,
  kind: z.enum(THROW_KINDS),
  pitches: pitchesInput,
  /** Null where nothing more is said, as of a bullpen. */
  game: gameInput.nullable().default(null),
};
