import { MAX_OPEN_CORRECTIONS, type Verdict } from "@/server/domain/reviews/correction-state";
import type { Random } from "../seeded-random";
import { moveTheme, openThemes } from "./correction-rows";
import { writeReview } from "./review-rows";
import type { Judged, Sending } from "./sending";
import type { Theme } from "./themes";
import type { World } from "./world";

const VERDICT_NOTES: Record<Verdict, readonly string[]> = {
  not_yet: [
    "Same picture as last time. Slow the drill down.",
    "Not there yet; ten dry ones before the first throw.",
    "It goes back under effort. Half speed this week.",
  ],
  partly: [
    "There on the second half of the clip.",
    "Better from the stretch than from the wind-up.",
    "You can see it coming. Keep the drill.",
  ],
  yes: ["That is it.", "On every pitch of the clip.", "Looks like yours now."],
};

const CHECK_NOTES = [
  "Good work between the two clips. Let us see the rest on the mound.",
  "Two weeks of the same drill before the next clip, please.",
  "Bring this to the lesson; we will confirm it there.",
];

const RETIRED_BECAUSE = "Another cue does the same job better; we go on with that one.";

/** Three times not yet in a row, and a correction may be given up. */
const NOT_YET_BEFORE_GIVING_UP = 3;

/** Writes the check of a reply: a verdict for every open correction, and now and then a word on one that had held. */
export function writeCheck(world: World, sending: Sending, themes: Theme[], random: Random): void {
  const note = random.chance(0.5) ? random.pick(CHECK_NOTES) : undefined;
  const open = openThemes(themes);
  const { judged } = writeReview(world, { ...sending, note }, themes, random);
  const seen = { actorId: sending.athlete.coachId, atMs: sending.sentAtMs, roundId: sending.roundId };
  const [anyClip] = sending.clips;
  for (const theme of open) {
    const one = judged.find((other) => other.theme === theme);
    const on = one ?? (anyClip ? { theme, clip: anyClip, score: 1 as const } : null);
    if (!on) continue;
    if (isGivenUp(theme) && random.chance(0.4)) {
      moveTheme(world, theme, "retired", { ...seen, words: RETIRED_BECAUSE });
      continue;
    }
    const verdict = verdictFor(on, random);
    const words = random.chance(0.5) ? { words: random.pick(VERDICT_NOTES[verdict]) } : {};
    moveTheme(world, theme, verdict, { ...seen, clip: on.clip, ...words });
  }
  lookAgain(world, judged, openThemes(themes).length, seen);
}

function verdictFor({ theme, score }: Judged, random: Random): Verdict {
  if (score === 3) return "yes";
  if (score === 2)
    return theme.correction?.standing.yesInARow ? "yes" : random.chance(0.25) ? "yes" : "partly";
  return score === 1 && theme.correction?.standing.state === "given" && random.chance(0.3)
    ? "partly"
    : "not_yet";
}

function isGivenUp({ correction }: Theme): boolean {
  const latest = correction?.events.slice(-NOT_YET_BEFORE_GIVING_UP) ?? [];
  return latest.length === NOT_YET_BEFORE_GIVING_UP && latest.every(({ kind }) => kind === "not_yet");
}

/** What had held and is seen to have gone comes back, while there is room for it. */
function lookAgain(
  world: World,
  judged: readonly Judged[],
  openCount: number,
  seen: { actorId: string; atMs: number; roundId: string },
): void {
  const lost = judged.find(({ theme, score }) => theme.correction?.standing.state === "held" && score <= 1);
  if (!lost || openCount >= MAX_OPEN_CORRECTIONS) return;
  moveTheme(world, lost.theme, "not_yet", {
    ...seen,
    clip: lost.clip,
    words: "This had held and has slipped; back to it.",
  });
}
