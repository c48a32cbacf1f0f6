import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";

/** The project's folder. */
export const home = fileURLToPath(new URL("../../", import.meta.url));

/** Node's own flags that let it read TypeScript. */
export const withTypeScript = ["--import", "tsx"];

/**
 * Runs a program to its end in the project's folder.
 * @returns its exit code and, when `quiet`, what it printed
 */
export function runCommand(program, words, { quiet = false, environment = {} } = {}) {
  return new Promise((resolve) => {
    const child = spawn(program, words, {
      cwd: home,
      env: { ...process.env, ...environment },
      stdio: quiet ? ["ignore", "pipe", "pipe"] : ["ignore", "inherit", "inherit"],
      shell: process.platform === "win32" && program === "npm",
    });
    let printed = "";
    child.stdout?.on("data", (part) => {
      printed += part;
    });
    child.stderr?.on("data", (part) => {
      printed += part;
    });
    child.on("error", (error) => resolve({ code: 127, printed: String(error.message) }));
    child.on("close", (code) => resolve({ code: code ?? 1, printed }));
  });
}
