/** The one command: checks, installs, builds, migrates, fills the demo, serves. `--dev` serves while sources change, `--empty` starts an academy of one's own. */
import { spawn } from "node:child_process";
import {
  academyKind,
  checkDataFolder,
  checkNode,
  checkPort,
  earlySettings,
  warnWhenOpen,
} from "./start/checks.mjs";
import { authSecret, buildIfNeeded, installIfNeeded } from "./start/prepare.mjs";
import { home, runCommand, withTypeScript } from "./start/run-command.mjs";
import { say, stop } from "./start/say.mjs";

const isDevelopment = process.argv.includes("--dev");
const wantsEmpty = process.argv.includes("--empty");

checkNode();
const settings = earlySettings();
warnWhenOpen(settings);
checkDataFolder(settings.dataFolder);
await checkPort(settings.port, settings.host);
const environment = {
  NODE_ENV: isDevelopment ? "development" : "production",
  NEXT_TELEMETRY_DISABLED: "1",
  SLABSIDE_DATA: settings.dataFolder,
  PORT: String(settings.port),
  HOST: settings.host,
  AUTH_SECRET: authSecret(settings.dataFolder),
  NEXTAUTH_URL: settings.publicUrl,
};

await installIfNeeded();
await step("server/env.ts", "The settings could not be read.");
const kind = academyKind(settings.dataFolder, wantsEmpty);
if (!isDevelopment) await buildIfNeeded();

await step("db/migrate.ts", "The database could not be made ready.");
if (kind === "demo") await step("seed/run.ts", "The demo academy could not be filled in.");

const server = spawn(
  process.execPath,
  [
    "node_modules/next/dist/bin/next",
    isDevelopment ? "dev" : "start",
    "--hostname",
    settings.host,
    "--port",
    String(settings.port),
  ],
  { cwd: home, env: { ...process.env, ...environment }, stdio: ["ignore", "pipe", "inherit"] },
);
server.stdout.on("data", (part) => {
  if (isDevelopment || process.env.LOG_LEVEL) process.stdout.write(part);
});
for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => server.kill(signal));
server.on("exit", (code) => process.exit(code ?? 0));

await untilItAnswers();
tellWhere();

/** Runs one of the project's own scripts, and stops with what it says of a bad setting, else with all it printed. */
async function step(script, whatFailed) {
  const { code, printed } = await runCommand(process.execPath, [...withTypeScript, script], {
    quiet: true,
    environment,
  });
  if (code === 0) return;
  const bad = /^Error: (Bad setting\..*)/m.exec(printed)?.[1];
  if (bad) stop(bad);
  say(printed.trim());
  stop(whatFailed);
}

async function untilItAnswers() {
  const host = settings.host === "0.0.0.0" || settings.host === "::" ? "localhost" : settings.host;
  for (let tries = 0; tries < 240; tries += 1) {
    try {
      const answer = await fetch(`http://${host}:${settings.port}/sign-in`);
      if (answer.ok) return;
    } catch {
      /* Not listening yet. */
    }
    await new Promise((wait) => setTimeout(wait, 250));
  }
  server.kill("SIGTERM");
  stop("The server did not answer within a minute. Its own words stand above.");
}

function tellWhere() {
  say("");
  say(`Slabside is running on ${settings.publicUrl}`);
  say(`Data: ${settings.dataFolder}`);
  if (kind === "own") {
    say("This academy is yours: the first visit makes its first admin.");
  } else {
    say("This is a demo: an invented academy with invented people. Every demo sign-in has the password");
    say("  fastball-over-the-corner");
    say("  admin     admin@slabside.example");
    say("  coach     coach@slabside.example");
    say("  guardian  guardian@slabside.example");
    say("  athlete   athlete@slabside.example");
  }
  say("Stop with Ctrl+C.");
}
