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
  return (await systemChromium()) ?? (await ownChromium());
}

/** The one named, one of the system, or Debian's package, which needs nothing installed here; null where there is none. */
export async function systemChromium() {
  const known = [process.env.CHROMIUM_PATH, ...KNOWN].find((path) => path && existsSync(path));
  if (known) return known;
  if (!existsSync("/etc/debian_version") || process.getuid?.() !== 0) return null;
  say("Installing Debian's Chromium.");
  await runCommand("apt-get", ["update", "-qq"], { quiet: true });
  const { code } = await runCommand("apt-get", ["install", "-y", "-qq", "chromium"], {
    quiet: true,
    environment: { DEBIAN_FRONTEND: "noninteractive" },
  });
  return code === 0 ? "/usr/bin/chromium" : null;
}

/** Playwright's own, by the Playwright that is installed. */
export async function ownChromium() {
  say("Installing Playwright's Chromium.");
  const { code } = await runCommand("npx", ["playwright", "install", "chromium"]);
  if (code !== 0)
    stop("No Chromium was found or could be installed. Install one and name it in CHROMIUM_PATH.");
  return "";
}
