/** Speed, mostly as ratios against a bare baseline of the same run. `npm run bench -- --json` prints one object a line. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { measureBoard } from "./board";
import { measureEvidence } from "./evidence";
import { measureHolding } from "./holding";
import type { Figure } from "./measure";
import { measurePlayer } from "./player";
import { measureArms, measureClaims, measureCommits } from "./records";
import { measureReview } from "./review";
import { measureSeason } from "./season";
import { measureSeasonPage } from "./season-page";
import { measureServing } from "./serving";

const isForPrograms = process.argv.includes("--json");
const folder = mkdtempSync(join(tmpdir(), "slabside-bench-"));
try {
  const review = await measureReview(folder);
  const figures: Figure[] = [
    await measureCommits(folder),
    await measureClaims(folder),
    await measureArms(folder),
    await measureServing(folder),
    ...(await measureBoard(folder)),
    await measureSeason(),
    await measureSeasonPage(folder),
    ...(await measurePlayer(folder)),
    ...review.figures,
    await measureHolding(folder),
    ...measureEvidence(),
  ];
  for (const figure of figures) {
    if (isForPrograms) console.log(JSON.stringify(figure));
    else {
      const verdict = figure.ok ? "ok" : "over";
      console.log(
        `${verdict.padEnd(5)} ${figure.value.toFixed(2).padStart(6)} ${figure.unit.padEnd(7)} (at most ${figure.target})  ${figure.name}`,
      );
    }
  }
  if (!isForPrograms) console.log(`\n${review.table}`);
  if (figures.some((figure) => !figure.ok)) process.exitCode = 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
