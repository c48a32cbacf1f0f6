import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeEach, vi } from "vitest";
import { clipPoster, putClipPoster } from "@/server/api/handlers/clip-poster";
import { clipVideo } from "@/server/api/handlers/clip-video";
import { receiveUpload } from "@/server/api/handlers/uploads";
import { keepVoiceNote, voiceNote } from "@/server/api/handlers/voice";
import { convertClips } from "@/server/jobs/convert-clips";
import { expireClips } from "@/server/jobs/expire-clips";
import { makeAcademy, type TestAcademy } from "./academy";

const desk = vi.hoisted(() => ({
  dataFolder: "",
  searchPath: "",
  who: "",
  academy: null as TestAcademy | null,
}));

function academyNow(): TestAcademy {
  if (!desk.academy) throw new Error("No academy was made.");
  return desk.academy;
}

vi.mock("@/server/env", () => ({
  env: {
    get dataFolder() {
      return desk.dataFolder;
    },
    get PATH() {
      return desk.searchPath;
    },
    databasePath: ":memory:",
    UPLOAD_RESERVE_BYTES: 0,
    LOG_LEVEL: "silent",
  },
}));
vi.mock("@/server/clock", () => ({ nowMs: () => academyNow().clock.ms }));
vi.mock("@/server/api/request-context", async () => {
  const { actorOfSignIn } = await import("@/server/data/access");
  return {
    requestContext: async () => {
      const { connections, db, clock } = academyNow();
      const actor = desk.who ? await actorOfSignIn(db, `sgn_${desk.who}`, clock.ms) : null;
      return { connections, actor, nowMs: clock.ms, requestId: null, address: "test" };
    },
  };
});

/**
 * The handlers and the clean-up under test. Take them from here: imported on their own they would be loaded before the
 * test's settings are in place.
 */
export const routes = {
  clipPoster,
  putClipPoster,
  clipVideo,
  receiveUpload,
  voiceNote,
  keepVoiceNote,
  expireClips,
  convertClips,
};

const held = globalThis as unknown as { slabsideUploads?: unknown; slabsideConnections?: unknown };

/**
 * A fresh academy and data folder for every test, behind the real route handlers. Only who is signed in, the clock and
 * the settings are the test's.
 */
export function clipRoutes() {
  const made: string[] = [];
  beforeEach(async () => {
    desk.dataFolder = mkdtempSync(join(tmpdir(), "slabside-test-"));
    made.push(desk.dataFolder);
    desk.academy = await makeAcademy();
    desk.who = "";
    desk.searchPath = "";
    held.slabsideConnections = desk.academy.connections;
    held.slabsideUploads = undefined;
  });
  afterAll(() => {
    for (const folder of made) rmSync(folder, { recursive: true, force: true });
  });
  return {
    get academy() {
      return academyNow();
    },
    get dataFolder() {
      return desk.dataFolder;
    },
    /** Who is signed in from now on; an empty text is nobody. */
    signIn: (personId: string) => {
      desk.who = personId;
    },
    /** Where programs are looked for from now on; without it there are none. */
    searchIn: (folder: string) => {
      desk.searchPath = folder;
    },
    /** Every file below a part of the data folder; none when it is not there. */
    files: (part: "clips" | "uploads"): string[] => filesBelow(join(desk.dataFolder, part)),
  };
}

function filesBelow(folder: string): string[] {
  try {
    return readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => entry.name)
      .sort();
  } catch {
    return [];
  }
}
