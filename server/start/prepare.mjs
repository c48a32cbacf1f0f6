import { createHash, randomBytes } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { home, runCommand } from "./run-command.mjs";
import { say, stop } from "./say.mjs";

const NODE_MAJOR = Number(process.versions.node.split(".")[0]);

/** From this Node on the database driver is one that is not compiled; see db/driver.ts. */
const NODE_API_FROM = 22;

const BUILT_FROM = [
  "app",
  "components",
  "db",
  "server",
  "next.config.mjs",
  "tsconfig.json",
  "proxy.ts",
  "instrumentation.ts",
  "package-lock.json",
];

/** Installs from the lock file when it, or the kind of Node, is not the one last installed for. */
export async function installIfNeeded() {
  const { driver } = await installPackages();
  await driver;
}

/**
 * Installs from the lock file as {@link installIfNeeded} does, and waits for the packages alone.
 * @returns what is there when the database driver is too: whoever opens no database need not wait for its compiler
 */
export async function installPackages() {
  const stamp = `${home}node_modules/.installed-for`;
  const wanted = `${hashOf(["package-lock.json"])} ${process.platform} ${process.arch} ${process.versions.modules}`;
  if (readOr(stamp) === wanted) return { driver: Promise.resolve() };
  say("Installing from the lock file.");
  await npm("ci", "--ignore-scripts", "--no-fund", "--no-audit", "--loglevel=error");
  return { driver: installDriver().then(() => writeFileSync(stamp, wanted)) };
}

async function installDriver() {
  if (NODE_MAJOR < NODE_API_FROM) {
    say("Fetching the database driver for Node 20, or compiling it, which takes a minute or two.");
    await npm("rebuild", "better-sqlite3-node20", "--loglevel=error");
  }
  await checkDriver();
}

async function npm(...words) {
  const { code } = await runCommand("npm", words);
  if (code !== 0)
    stop("The install failed; what npm said stands above. Check the network and run the command again.");
}

/** A driver that npm built for another Node does not load: better said here than by the loader. */
async function checkDriver() {
  const opening = `new (require("${NODE_MAJOR < NODE_API_FROM ? "better-sqlite3-node20" : "better-sqlite3"}"))(":memory:")`;
  const { code } = await runCommand(process.execPath, ["-e", opening], { quiet: true });
  if (code === 0) return;
  stop(
    `The database driver was built for another Node than this one (${process.version}). Nothing was started. Run the command again; should it stay so, npm builds with another Node's headers (its setting nodedir).`,
  );
}

/** Builds for production when the sources changed since the last build. */
export async function buildIfNeeded() {
  const stamp = `${home}.next/built-from`;
  const wanted = hashOf(BUILT_FROM);
  if (readOr(stamp) === wanted && existsSync(`${home}.next/BUILD_ID`)) return;
  say("Building. This takes about half a minute.");
  const { code, printed } = await runCommand(process.execPath, ["node_modules/next/dist/bin/next", "build"], {
    quiet: true,
    environment: { NODE_ENV: "production", NEXT_TELEMETRY_DISABLED: "1" },
  });
  if (code !== 0) {
    say(printed);
    stop("The build failed; its own words stand above.");
  }
  writeFileSync(stamp, wanted);
}

/** The secret that signs the sign-in cookie: the one set, else one made once and kept in the data folder. */
export function authSecret(folder) {
  if (process.env.AUTH_SECRET) return process.env.AUTH_SECRET;
  const path = `${folder}/auth-secret`;
  if (!existsSync(path)) writeFileSync(path, randomBytes(48).toString("base64url"), { mode: 0o600 });
  return readFileSync(path, "utf8").trim();
}

function readOr(path) {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return "";
  }
}

function hashOf(names) {
  const hash = createHash("sha256");
  for (const name of names) {
    for (const path of filesBelow(`${home}${name}`)) {
      hash.update(path.slice(home.length)).update(readFileSync(path));
    }
  }
  return hash.digest("hex");
}

function filesBelow(path) {
  if (!existsSync(path)) return [];
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((name) => filesBelow(`${path}/${name}`));
}
