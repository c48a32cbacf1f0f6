import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));

/** Tests that put something in a module's place: what others have loaded must not be theirs. */
const STANDING_IN = [
  "test/api/{month-export,clips-*,voice*}.test.ts",
  "test/components/shell/shell.test.tsx",
  "test/components/throwing/log-markup.test.tsx",
];

export default defineConfig({
  root,
  resolve: {
    alias: {
      "@": root.replace(/\/$/, ""),
      "server-only": fileURLToPath(new URL("./helpers/empty.ts", import.meta.url)),
    },
  },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: "together",
          include: ["test/{domain,data,api,components}/**/*.test.{ts,tsx}"],
          exclude: STANDING_IN,
          /* They leave nothing behind: sharing what they import takes half the time. */
          isolate: false,
        },
      },
      {
        extends: true,
        test: { name: "apart", include: ["test/{seed,media,house}/**/*.test.{ts,tsx}", ...STANDING_IN] },
      },
    ],
    /* Every core: by itself vitest leaves one idle, which on two is half of them. */
    maxWorkers: "100%",
    testTimeout: 30_000,
    hookTimeout: 60_000,
  },
});
