import { accessSync, constants, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { resolve } from "node:path";
import { home } from "./run-command.mjs";
import { say, stop } from "./say.mjs";

/** Stops with one line when Node is too old. */
export function checkNode() {
  const [major, minor] = process.versions.node.split(".").map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  stop(
    `Slabside needs Node 20.19 or newer; this is ${process.versions.node}. Install a newer Node and run the command again.`,
  );
}

/** The settings that are needed before anything is installed; the rest is read by server/env.ts. */
export function earlySettings() {
  const port = Number(process.env.PORT || 3000);
  if (!Number.isInteger(port) || port < 1 || port > 65_535) {
    stop(`Bad setting. PORT: ${process.env.PORT} is not a port; use a number from 1 to 65535.`);
  }
  const host = process.env.HOST || "127.0.0.1";
  const dataFolder = resolve(home, process.env.SLABSIDE_DATA || "data");
  const publicUrl = process.env.PUBLIC_URL || `http://localhost:${port}`;
  return { port, host, dataFolder, publicUrl, isOpen: !["127.0.0.1", "localhost", "::1"].includes(host) };
}

/** Stops with one line when the data folder cannot be written. */
export function checkDataFolder(folder) {
  try {
    mkdirSync(folder, { recursive: true });
    accessSync(folder, constants.W_OK);
    writeFileSync(`${folder}/.write-test`, "");
  } catch (error) {
    stop(
      `The data folder ${folder} cannot be written (${error.code ?? error.message}). Make it writable, or name another in SLABSIDE_DATA.`,
    );
  }
}

/** Stops with one line when something else listens on the port. */
export function checkPort(port, host) {
  return new Promise((free) => {
    const probe = createServer();
    probe.once("error", (error) => {
      if (error.code === "EADDRINUSE") {
        stop(`Port ${port} is in use. Stop the other program, or choose another: PORT=${port + 1} npm start`);
      }
      stop(
        `Cannot listen on ${host}:${port} (${error.code}). Set HOST and PORT to an address of this machine.`,
      );
    });
    probe.listen(port, host, () => probe.close(() => free()));
  });
}

/**
 * Which academy the data folder holds: "demo" or "own". The first start decides; `--empty` on a folder that holds the
 * demo is refused.
 */
export function academyKind(folder, wantsEmpty) {
  const marker = `${folder}/academy.txt`;
  let kind = "";
  try {
    kind = readFileSync(marker, "utf8").trim();
  } catch {
    kind = wantsEmpty ? "own" : "demo";
    writeFileSync(marker, `${kind}\n`);
  }
  if (wantsEmpty && kind === "demo") {
    stop(
      `${folder} already holds the demo academy. Name another folder in SLABSIDE_DATA, or empty it first: npm run db:reset`,
    );
  }
  return kind;
}

/** A word on opening the port beyond this machine, which needs the address that people type. */
export function warnWhenOpen({ isOpen, host }) {
  if (!isOpen) return;
  if (!process.env.PUBLIC_URL) {
    stop("Bad setting. PUBLIC_URL: needed when HOST opens the port, such as https://academy.example");
  }
  say(
    `HOST is ${host}: other devices can reach this. Phones send video and cookies safely only over TLS, so put a proxy with a certificate in front and set PUBLIC_URL to its https address.`,
  );
}
