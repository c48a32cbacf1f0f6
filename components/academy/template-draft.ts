import type { Checkpoint } from "@/server/domain/mechanics/checkpoint";
import type { ReviewTemplate, TemplateLine } from "@/server/domain/reviews/review-template";

/** A template as it is being written: ages may be empty. */
export interface TemplateDraft {
  name: string;
  fromAge: number | null;
  toAge: number | null;
  lines: readonly TemplateLine[];
}

/** A template of which nothing is written yet, with one line to begin with. */
export const EMPTY_TEMPLATE: TemplateDraft = {
  name: "",
  fromAge: 9,
  toAge: 12,
  lines: [{ kind: "correction", checkpointId: "", words: "", drill: "" }],
};

/** Adds an empty line of the kind that the last one has. */
export function withLine(draft: TemplateDraft): TemplateDraft {
  const kind = draft.lines.at(-1)?.kind ?? "correction";
  return { ...draft, lines: [...draft.lines, { kind, checkpointId: "", words: "", drill: "" }] };
}

/** Takes a line away. */
export function withoutLine(draft: TemplateDraft, at: number): TemplateDraft {
  return { ...draft, lines: draft.lines.filter((_line, index) => index !== at) };
}

/**
 * Changes a line. When its checkpoint or kind changes, words that are empty or the usual ones of what it was become the
 * usual ones of what it is: the checkpoint's first cue and drill, or what is good about it. Words of one's own stay.
 */
export function withChangedLine(
  draft: TemplateDraft,
  at: number,
  changes: Partial<TemplateLine>,
  checkpoints: readonly Checkpoint[],
): TemplateDraft {
  const lines = draft.lines.map((before, index) => {
    if (index !== at) return before;
    const line = { ...before, ...changes };
    const isAnother = line.kind !== before.kind || line.checkpointId !== before.checkpointId;
    return isAnother ? withUsualWords(line, before, checkpoints) : line;
  });
  return { ...draft, lines };
}

function withUsualWords(
  line: TemplateLine,
  before: TemplateLine,
  checkpoints: readonly Checkpoint[],
): TemplateLine {
  const [was, is] = [usualOf(before, checkpoints), usualOf(line, checkpoints)];
  const isUsual = (text: string, usual: string) => text.trim() === "" || text === usual;
  return {
    ...line,
    words: isUsual(line.words, was.words) ? is.words : line.words,
    drill: line.kind === "keep" || isUsual(line.drill, was.drill) ? is.drill : line.drill,
  };
}

function usualOf({ kind, checkpointId }: TemplateLine, checkpoints: readonly Checkpoint[]) {
  const checkpoint = checkpoints.find((each) => each.id === checkpointId);
  if (kind === "keep") return { words: checkpoint?.clearLooksLike ?? "", drill: "" };
  return { words: checkpoint?.cues[0] ?? "", drill: checkpoint?.drills[0] ?? "" };
}

/** The template as it is sent; an empty age goes as 0, which is refused in words at its field. */
export function asTemplate({ name, fromAge, toAge, lines }: TemplateDraft): ReviewTemplate {
  return { name, fromAge: fromAge ?? 0, toAge: toAge ?? 0, lines: [...lines] };
}
