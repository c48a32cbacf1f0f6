import type { BookAnswer } from "./book-answer";
import type { LimitReason } from "./limit-reason";
import type { Hold } from "./rule-hold";

type Said = Pick<BookAnswer, "status" | "outs" | "holds">;

type Holding<On extends Hold["on"]> = Extract<Hold, { on: On }>;

/**
 * Why the strictest of several answers is what it is, in order of what binds; then why another book leaves fewer outs,
 * and last what any of the books has to say without a number, each once.
 * @param answers the strictest first
 */
export function reasonsOf(answers: readonly Said[]): LimitReason[] {
  const [strictest, ...others] = answers;
  if (!strictest) return [];
  const fewestOuts = Math.min(...answers.map((answer) => answer.outs));
  const shorter = strictest.status === "resting" ? undefined : others.find(isShorter);
  function isShorter(answer: Said): boolean {
    return answer.outs === fewestOuts && answer.outs < (strictest?.outs ?? 0);
  }
  return [
    ...ownReasons(strictest),
    ...(shorter ? numberReasons(shorter.holds, "outs") : []),
    ...notes(answers),
  ];
}

function ownReasons({ status, holds, outs }: Said): LimitReason[] {
  if (status === "resting") return restReasons(holds);
  const pitches = numberReasons(holds, "pitches");
  const innings = numberReasons(holds, "outs");
  return outs === 0 ? [...innings, ...pitches] : [...pitches, ...innings];
}

/** The longest lasting first; what names no end of its own after those. */
function restReasons(holds: readonly Hold[]): LimitReason[] {
  return holds
    .filter((hold): hold is Holding<"rest"> => hold.on === "rest")
    .toSorted((a, b) => b.freeOn - a.freeOn)
    .map((hold) => hold.reason());
}

/** The tightest, then what the day itself takes off it, then the wider ones. */
function numberReasons(holds: readonly Hold[], unit: "pitches" | "outs"): LimitReason[] {
  const numbers = holds
    .filter((hold): hold is Holding<"pitches" | "outs"> => hold.on === unit)
    .toSorted((a, b) => a.most - b.most);
  const least = numbers[0]?.most;
  const [first, ...wider] = numbers.filter((hold) => !hold.saidWhenBinding || hold.most === least);
  if (!first) return [];
  const taken = holds.filter((hold) => hold.on === "taken" && hold.unit === unit);
  return [first, ...taken, ...wider].map((hold) => hold.reason());
}

function notes(answers: readonly Said[]): LimitReason[] {
  const said = answers
    .flatMap((answer) => answer.holds)
    .filter((hold) => hold.on === "note")
    .map((hold) => hold.reason());
  return said.filter((note, index) => said.findIndex((other) => other.kind === note.kind) === index);
}
