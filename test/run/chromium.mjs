import { existsSync } from "node:fs";
import { runCommand } from "../../server/start/run-command.mjs";
import { say, stop } from "../../server/start/say.mjs";

const KNOWN = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/** Path of a Chromium: the one named, one of the system, Debian's package, or "" for Playwright's own. */
export async function findChromium() {
  const known = [process.env.CHROMIUM_PATH, ...KNOWN].find((path) => path && existsSync(path));
  if (known) return known;
  if (existsSync("/etc/debian_version") && process.getuid?.() === 0) {
    say("Installing Debian's Chromium.");
    await runCommand("apt-get", ["update", "-qq"], { quiet: true });
    const { code } = await runCommand("apt-get", ["install", "-y", "-qq", "chromium"], {
      quiet: true,
      environment: { DEBIAN_FRONTEND: "noninteractive" },
    });
    if (code === 0) return "/usr/bin/chromium";
  }
  say("Installing Playwright's Chromium.");
  const { code } = await runCommand("npx", ["playwright", "install", "chromium"]);
  if (code !== 0)
    stop("No Chromium was found or could be installed. Install one and name it in CHROMIUM_PATH.");
  return "";
}
