import { PHASE_WORDS } from "@/server/domain/mechanics/delivery";
import { dayInWords } from "@/server/domain/time/words";
import type { SessionsAttended } from "./sessions-attended";
import type { WorkedOn } from "./worked-on";

/** What a coach may write into a report: a few lines, so that it stays two pages. */
export const FOCUS_LENGTH = 600;

/** What every report says of itself. */
export const REPORT_CAUTIONS = [
  "This tells what was recorded at the academy and logged at home. What nobody wrote down is not in it.",
  "“Measurement error” is how far two looks at the same thing differ by themselves, worked out from this academy’s own repeats. A change smaller than that is not told as one, and a change that is told has no proven cause.",
  "Limits on throwing are those of the rule book; the league’s own rules, the athlete’s physician and athletic trainer come first. Pain stops all throwing. Nothing here is medical advice.",
] as const;

/**
 * A season in a few short sentences, for whoever reads no further.
 * @example "5 corrections were worked on: 3 hold, 2 are open." …
 */
export function seasonInShort(
  worked: readonly WorkedOn[],
  changed: { lookedAt: number; beyondError: number },
  sessions: Pick<SessionsAttended, "booked" | "came">,
): string[] {
  const { lookedAt, beyondError } = changed;
  const compared =
    lookedAt === 0
      ? "No checkpoint has enough observations to tell a change from error."
      : `${counted(lookedAt, "checkpoint was", "checkpoints were")} compared; ${beyondError} changed beyond measurement error.`;
  return [
    workedOnInWords(worked),
    compared,
    ...(sessions.booked === 0 ? [] : [`${sessions.came} of ${sessions.booked} booked sessions attended.`]),
  ];
}

/** What became of all that was worked on, in one sentence. */
export function workedOnInWords(worked: readonly WorkedOn[]): string {
  if (worked.length === 0) return "No correction was worked on in this time.";
  const held = worked.filter(({ state }) => state === "held").length;
  const retired = worked.filter(({ state }) => state === "retired").length;
  const open = worked.length - held - retired;
  const back = worked.filter(({ cameBackOn }) => cameBackOn !== null).length;
  const parts = [
    ...(held > 0 ? [`${held} ${held === 1 ? "holds" : "hold"}`] : []),
    ...(open > 0 ? [`${open} ${open === 1 ? "is" : "are"} still open`] : []),
    ...(retired > 0 ? [`${retired} ${retired === 1 ? "was" : "were"} let go`] : []),
  ];
  const cameBack = back === 0 ? "" : ` ${back} that had held came back on the way.`;
  return `${counted(worked.length, "correction was", "corrections were")} worked on: ${parts.join(", ")}.${cameBack}`;
}

const counted = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

/**
 * The days of a correction, in one line.
 * @example "given on Sat 10 Jan, held on Thu 2 Apr, practised on 12 days"
 */
export function correctionDaysInWords(worked: WorkedOn): string {
  const { givenOn, heldOn, cameBackOn, practiceDays } = worked;
  const year = { withYear: true };
  const steps = [
    ...(cameBackOn === null
      ? []
      : [{ on: cameBackOn, words: `came back on ${dayInWords(cameBackOn, year)}` }]),
    ...(heldOn === null ? [] : [{ on: heldOn, words: `held on ${dayInWords(heldOn, year)}` }]),
  ].sort((one, other) => (one.on < other.on ? -1 : 1));
  return [
    `given on ${dayInWords(givenOn, year)}`,
    ...steps.map(({ words }) => words),
    ...(practiceDays === 0 ? [] : [`practised on ${counted(practiceDays, "day", "days")}`]),
  ].join(", ");
}

/**
 * All that is said of a correction beside its name and how it stands.
 * @example "Stride, given on Tue 10 Mar 2026, practised on 1 day: “Ride the back leg”"
 */
export function aboutInWords(worked: WorkedOn): string {
  const said = `${PHASE_WORDS[worked.phase]}, ${correctionDaysInWords(worked)}`;
  return worked.cue === "" ? said : `${said}: “${worked.cue}”`;
}

/* A page of Letter paper leaves the corrections 352 units of height; a row takes 31, or 44 where its words need a second line. */
const [ROOM, ONE_LINE, TWO_LINES, LETTERS_A_LINE] = [352, 31, 44, 105];

/**
 * What stands on paper of a list that may be too long for it: those in which something happened last, as many as there
 * is room for.
 * @returns the ids, in no order
 */
export function printedWorkedOn(worked: readonly WorkedOn[]): Set<string> {
  const lastDay = ({ givenOn, heldOn, cameBackOn }: WorkedOn) =>
    [givenOn, heldOn ?? "", cameBackOn ?? ""].sort().at(-1) ?? "";
  const printed = new Set<string>();
  let room = ROOM;
  for (const each of [...worked].sort((one, other) => (lastDay(one) < lastDay(other) ? 1 : -1))) {
    room -= aboutInWords(each).length > LETTERS_A_LINE ? TWO_LINES : ONE_LINE;
    if (room < 0) break;
    printed.add(each.id);
  }
  return printed;
}
