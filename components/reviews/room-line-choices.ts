import type { CorrectionView } from "@/server/api/reviews/shapes";
import type { Checkpoint } from "@/server/domain/mechanics/checkpoint";
import { PHASE_WORDS, viewsInWords } from "@/server/domain/mechanics/delivery";
import { findCheckpoints, isInSight, type PictureNow } from "@/server/domain/mechanics/find-checkpoints";
import type { ReviewDraft } from "@/server/domain/reviews/draft";
import type { SayingKind } from "./room-saying";

/** How many choices the line shows; more letters bring the others. Common practice, no source. */
const SHOWN = 7;

/** From how many letters on words that are no checkpoint can be kept as they are. */
const OWN_WORDS_FROM = 4;

/** One thing that can be chosen in the line: a checkpoint, or a keep in the very words that were typed. */
export type LineChoice =
  | { id: string; checkpoint: Checkpoint; words: string; facts: string; isOff: boolean }
  | { id: "own-words"; checkpoint: null; words: string; facts: string; isOff: false };

/** What the line chooses from. */
export interface LineFacts {
  checkpoints: readonly Checkpoint[];
  now: PictureNow;
  document: Pick<ReviewDraft, "corrections" | "keeps">;
  open: readonly Pick<CorrectionView, "checkpointId">[];
}

/** What the letters typed so far can mean, the likeliest first. */
export function lineChoices(typed: string, kind: SayingKind, facts: LineFacts): LineChoice[] {
  const found = findCheckpoints(typed, facts.checkpoints, facts.now)
    .slice(0, SHOWN)
    .map((checkpoint): LineChoice => {
      const isOff = !isInSight(checkpoint, facts.now.view);
      const { id, name: words } = checkpoint;
      return { id, checkpoint, words, isOff, facts: factsOf(checkpoint, kind, facts) };
    });
  const text = typed.trim();
  if (kind !== "keep" || text.length < OWN_WORDS_FROM) return found;
  return [
    ...found,
    { id: "own-words", checkpoint: null, words: text, facts: "in these words", isOff: false },
  ];
}

function factsOf(checkpoint: Checkpoint, kind: SayingKind, { now, document, open }: LineFacts): string {
  const isOnIt = (row: { checkpointId: string | null }) => row.checkpointId === checkpoint.id;
  if (!isInSight(checkpoint, now.view)) return `seen from the ${viewsInWords(checkpoint.views)} only`;
  const rows = kind === "keep" ? document.keeps : document.corrections;
  const phase = PHASE_WORDS[checkpoint.phase];
  if (rows.some(isOnIt)) return `${phase}, on the slip`;
  if (kind === "correction" && open.some(isOnIt)) return `${phase}, open already: shown again`;
  return phase;
}
