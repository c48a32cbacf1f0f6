/**
 * The keystroke-level model: what an expert's hands need for a task that goes without an error. Operator times in
 * seconds of Card SK, Moran TP, Newell A (1980) "The keystroke-level model for user performance time with interactive
 * systems", Communications of the ACM 23:396-410, and (1983) "The Psychology of Human-Computer Interaction": a keystroke
 * of an average non-secretary typist (40 words a minute), pointing, moving the hands between keyboard and pointer,
 * preparing in the mind.
 */
export const OPERATOR_S = { K: 0.28, P: 1.1, H: 0.4, M: 1.35 } as const;

/** One operator. */
export type Operator = keyof typeof OPERATOR_S;

/** What was done, in the operators it takes, e.g. `MKKK`. */
export interface Act {
  /** What it is for, as a row of the breakdown. */
  part: string;
  operators: string;
}

/** How often each operator occurs, and how long all take. */
export interface Cost {
  counts: Record<Operator, number>;
  seconds: number;
}

/** What acts cost together; a letter that is no operator is a mistake of the caller and is not counted. */
export function costOf(acts: readonly Act[]): Cost {
  const counts = { K: 0, P: 0, H: 0, M: 0 };
  for (const { operators } of acts) {
    for (const each of operators) if (each in counts) counts[each as Operator] += 1;
  }
  const names = Object.keys(counts) as Operator[];
  const seconds = names.reduce((sum, name) => sum + counts[name] * OPERATOR_S[name], 0);
  return { counts, seconds };
}

/** The cost of each part, in the order in which the parts first come. */
export function costByPart(acts: readonly Act[]): Map<string, Cost> {
  const parts = new Map<string, Act[]>();
  for (const act of acts) parts.set(act.part, [...(parts.get(act.part) ?? []), act]);
  return new Map([...parts].map(([part, own]) => [part, costOf(own)]));
}

/**
 * The bare alternative: the same words typed into a message, each finding with the clip's time before it, read off by
 * hand. A finding is prepared once and its time once (both by rule 0 of the model), then typed key by key.
 * @param findings the words of each, cue and drill in one
 */
export function typedByHand(findings: readonly string[]): Act[] {
  return findings.flatMap((words) => [
    { part: "the time of the frame, read off and typed", operators: `M${"K".repeat("1.852 s: ".length)}` },
    { part: "the words of the finding, typed", operators: `M${"K".repeat(words.length + 1)}` },
  ]);
}
