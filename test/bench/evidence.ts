/** How often what is said of a change is right, on seasons whose true changes are known. */
import { pathToFileURL } from "node:url";
import { type ManyCheckpoints, manyCheckpoints } from "../../server/domain/mechanics/many-checkpoints";
import { observedDays } from "../../server/domain/mechanics/observation";
import { sinceCorrection } from "../../server/domain/mechanics/since-correction";
import { type DrawnCheckpoint, drawnSeason, type Truth } from "./drawn-evidence";
import type { Figure } from "./measure";

const SEASONS = 200;

/** What is really so of a checkpoint, and what was said: of it alone, and among all of its season. */
export interface Told {
  truth: Truth;
  trueChange: number;
  alone: string;
  amongAll: string;
}

/**
 * Both promises over so many seasons: the share of true changes of two detectable changes and more that is told right,
 * with three days a side at least, and that of improvements told where nothing changed.
 */
export function measureEvidence(seasons = SEASONS): Figure[] {
  const told = Array.from({ length: seasons }, (_, at) => seasonTold(`evidence ${at}`)).flat();
  return (["alone", "amongAll"] as const).flatMap((way) => {
    const words = way === "alone" ? "each by itself" : "among all of a season";
    const changed = told.filter(({ trueChange, ...each }) => trueChange >= 2 && each[way] !== "too_few");
    const still = told.filter(({ truth, ...each }) => truth === "nothing" && each[way] !== "too_few");
    const missed = changed.filter((each) => each[way] !== rightOutcome(each.truth));
    const falsely = still.filter((each) => each[way] === "improved");
    return [
      figure(`true changes of 2 detectable changes and more not told right, ${words}`, missed, changed),
      figure(`improved is told where nothing changed, ${words}`, falsely, still),
    ];
  });
}

/** What is told of one season, checkpoint by checkpoint. */
export function seasonTold(seed: string): Told[] {
  const drawn = drawnSeason(seed);
  const alone = drawn.map((checkpoint, at) => ({ id: `${at}`, since: sinceOf(checkpoint) }));
  const { results } = manyCheckpoints(alone);
  return drawn.map(({ truth, trueChange }, at) => ({
    ...{ truth, trueChange },
    alone: outcomeOf(alone[at]?.since),
    amongAll: outcomeOf(results[at]?.since),
  }));
}

function sinceOf({ kind, observations, givenOn, error }: DrawnCheckpoint) {
  const days = observedDays(observations);
  return sinceCorrection({ kind, days }, { givenOn, seenOn: givenOn }, { kind: "more" }, error);
}

function outcomeOf(since: ManyCheckpoints["results"][number]["since"] | undefined): string {
  return since?.kind === "change" ? since.outcome : "too_few";
}

const rightOutcome = (truth: Truth) => (truth === "worse" ? "worse" : "improved");

function figure(name: string, wrong: readonly Told[], all: readonly Told[]): Figure {
  const value = Math.round((wrong.length / all.length) * 10_000) / 100;
  return { name: `${name} (of ${all.length})`, value, unit: "%", target: 5, ok: value <= 5 };
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  for (const { ok, value, unit, name, target } of measureEvidence()) {
    console.log(`${ok ? "ok" : "over"} ${value.toFixed(2)} ${unit} (at most ${target}) ${name}`);
  }
}
