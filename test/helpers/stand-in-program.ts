import { chmod, writeFile } from "node:fs/promises";
import { join } from "node:path";

/** What each stand-in does in place of making a copy. */
const SCRIPTS = {
  /** Says how far it is a few times, a little apart, and writes a file that is no film. */
  slow: `
    for (const us of [200000, 400000, 600000, 800000]) {
      console.log("frame=1\\nout_time_us=" + us + "\\nprogress=continue");
      await new Promise((wait) => setTimeout(wait, 60));
    }
    writeFileSync(to, "not a film");`,
  /** Says that it is part of the way, and goes no farther until a file called `go` lies beside it; writes no film. */
  "part of the way": `
    console.log("out_time_us=400000");
    while (!existsSync(join(here, "go"))) await new Promise((wait) => setTimeout(wait, 20));
    writeFileSync(to, "not a film");`,
  /** Copies a film that somebody made for it: the path is in its own folder. */
  copies: `copyFileSync(join(here, "made.mp4"), to); console.log("out_time_us=1000000");`,
  /** The same, once a file called `go` lies beside it. */
  "copies when told": `
    console.log("out_time_us=0");
    while (!existsSync(join(here, "go"))) await new Promise((wait) => setTimeout(wait, 50));
    copyFileSync(join(here, "made.mp4"), to);`,
  failing: `console.error("Conversion failed!"); process.exitCode = 1;`,
  /** Never says a word and never ends, whatever it is asked. */
  hanging: `process.on("SIGTERM", () => {}); setInterval(() => {}, 1000);`,
  /** Goes on saying that it is at work, and never ends. */
  endless: `setInterval(() => console.log("out_time_us=N/A"), 20);`,
  /** Knows the option for frame times by its former name alone. */
  older: `
    if (process.argv.includes("-fps_mode")) {
      console.error("Unrecognized option 'fps_mode'.");
      process.exit(1);
    }
    writeFileSync(to, process.argv.includes("-vsync") ? "older" : "neither");`,
  /** Tells of its arguments in place of a film. */
  telling: `writeFileSync(to, JSON.stringify({ args: process.argv.slice(2), priority: getPriority() }));`,
} as const;

/** Writes a program into a folder that stands in for the one which converts films. @returns its path */
export async function standIn(folder: string, does: keyof typeof SCRIPTS): Promise<string> {
  const path = join(folder, `stand-in-${does.replaceAll(" ", "-")}.mjs`);
  const script = `#!${process.execPath}
import { copyFileSync, existsSync, writeFileSync } from "node:fs";
import { getPriority } from "node:os";
import { join } from "node:path";
const here = import.meta.dirname;
const to = (process.argv.at(-1) ?? "").replace(/^file:/, "");
${SCRIPTS[does]}
`;
  await writeFile(path, script);
  await chmod(path, 0o755);
  return path;
}
