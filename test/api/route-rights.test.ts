import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { ROUTE_RIGHTS } from "@/server/api/route-rights";
import { RIGHTS } from "@/server/domain/access/rights";

/** Sign-in and the procedures have rules of their own, walked elsewhere. */
const ELSEWHERE = ["/api/auth/[...nextauth]", "/api/trpc/[trpc]"];
const METHODS = ["GET", "HEAD", "POST", "PUT", "PATCH", "DELETE"];

function handlersBelow(folder: string, path: string): string[] {
  return readdirSync(join(folder, path), { withFileTypes: true }).flatMap((entry) => {
    if (entry.isDirectory()) return handlersBelow(folder, `${path}/${entry.name}`);
    if (entry.name !== "route.ts") return [];
    const source = readFileSync(join(folder, path, entry.name), "utf8");
    const exported = source.split("\n").filter((line) => /^export /.test(line));
    return METHODS.filter((method) => exported.some((line) => new RegExp(`\\b${method}\\b`).test(line))).map(
      (method) => `${method} ${path}`,
    );
  });
}

it("every route handler names the right it needs, and no name stands for a handler that is not there", () => {
  const found = handlersBelow(join(import.meta.dirname, "../../app"), "/api").filter(
    (handler) => !ELSEWHERE.some((path) => handler.endsWith(` ${path}`)),
  );
  const named = ROUTE_RIGHTS.map(({ method, path }) => `${method} ${path}`);
  expect(named.toSorted()).toEqual(found.toSorted());
  expect(ROUTE_RIGHTS.every(({ action }) => action in RIGHTS)).toBe(true);
});
