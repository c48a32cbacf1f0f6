import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** The project's folder, with a slash at the end. */
export const home = fileURLToPath(new URL("../../", import.meta.url));

/** The text of a file of the project. */
export const textOf = (path: string): string => readFileSync(`${home}${path}`, "utf8");

/** The documents, by their paths. */
export const DOCUMENTS = [
  "README.md",
  "DEVELOPERS.md",
  ...filesBelow("docs").filter((path) => path.endsWith(".md")),
];

/** Every file below a folder of the project, by its path. */
export function filesBelow(folder: string): string[] {
  return readdirSync(`${home}${folder}`, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? filesBelow(`${folder}/${entry.name}`) : [`${folder}/${entry.name}`],
  );
}

/** What a program printed, whatever its exit code. */
export function printedBy(words: readonly string[], cwd: string): string {
  try {
    return execFileSync(process.execPath, words, {
      cwd,
      encoding: "utf8",
      stdio: ["ignore", "pipe", "pipe"],
      maxBuffer: 1 << 28,
    });
  } catch (error) {
    const { stdout, stderr } = error as { stdout?: string; stderr?: string };
    return `${stdout ?? ""}${stderr ?? ""}`;
  }
}
