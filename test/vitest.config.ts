import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));

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
          /* They leave nothing behind: sharing what they import takes half the time. */
          isolate: false,
        },
      },
      {
        extends: true,
        test: { name: "apart", include: ["test/{seed,media,house}/**/*.test.{ts,tsx}"] },
      },
    ],
    /* Every core: by itself vitest leaves one idle, which on two is half of them. */
    maxWorkers: "100%",
    testTimeout: 30_000,
    hookTimeout: 60_000,
  },
});
