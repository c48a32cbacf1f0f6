import { readFileSync } from "node:fs";
import { constants, setPriority } from "node:os";
import { pathToFileURL } from "node:url";
import { type ClipParameters, clipParameters } from "./clip-parameters";
import { drawClip } from "./draw-clip";

/** One clip to draw: its parameters (those left out take their usual values) and the path of the video. */
export type ClipOrder = { readonly parameters: Partial<ClipParameters>; readonly outPath: string };

/** What is printed, one line of JSON for each clip, in the order of the list. */
export type ClipProgress = { readonly outPath: string; readonly done: number; readonly of: number };

async function drawAll(listPath: string): Promise<void> {
  const orders: readonly ClipOrder[] = JSON.parse(readFileSync(listPath, "utf8"));
  for (const [n, order] of orders.entries()) {
    await drawClip(clipParameters(order.parameters), order.outPath);
    const progress: ClipProgress = { outPath: order.outPath, done: n + 1, of: orders.length };
    await new Promise<void>((written) =>
      process.stdout.write(`${JSON.stringify(progress)}\n`, () => written()),
    );
  }
}

/** Runs only as a process of its own: `node --import tsx seed/clips/draw-child.ts list.json`. */
async function main(listPath: string | undefined): Promise<void> {
  // Whoever is using the product comes first; drawing takes what is left.
  setPriority(constants.priority.PRIORITY_LOW);
  if (listPath === undefined) throw new RangeError("name the list of clips to draw");
  await drawAll(listPath);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  main(process.argv[2]).then(
    // The encoder keeps the process alive when it is done.
    () => process.exit(0),
    (error: unknown) => {
      console.error(error instanceof Error ? error.message : error);
      process.exit(1);
    },
  );
}
