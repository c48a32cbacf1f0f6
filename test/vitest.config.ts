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
    include: ["test/{domain,data,api,components,seed,media,house}/**/*.test.{ts,tsx}"],
    /* Every core: by itself vitest leaves one idle, which on two is half of them. */
    maxWorkers: "100%",
    testTimeout: 30_000,
    hookTimeout: 60_000,
  },
});
