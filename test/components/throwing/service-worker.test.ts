import { runInNewContext } from "node:vm";
import { beforeEach, describe, expect, it } from "vitest";
import { textOf } from "../../house/house";

const ORIGIN = "https://academy.example";
const PAGE = `<link href="/_next/static/css/a.css"><script src="/_next/static/chunks/b-1.js"></script>
  <script>self.__next_f.push([1,"I[7,[\\"static/chunks/app/(open)/c.js\\",\\"/_next/static/chunks/b-1.js\\"]"])</script>`;

interface FakeEvent {
  request?: { method: string; mode: string; url: string };
  data?: unknown;
  waitUntil: (work: Promise<unknown>) => void;
  respondWith: (answer: Promise<Response>) => void;
}

/** The worker as a browser runs it, with a cache and a network of the test's own. */
function startWorker() {
  const kept = new Map<string, Response>();
  const asked: { path: string; options: unknown }[] = [];
  const network = { isUp: true, missing: new Set<string>(), page: PAGE };
  const listeners = new Map<string, (event: FakeEvent) => void>();
  const fetch = async (what: string | { url: string }, options?: unknown) => {
    const path = new URL(typeof what === "string" ? what : what.url, ORIGIN).pathname;
    asked.push({ path, options });
    if (!network.isUp) throw new TypeError("Failed to fetch");
    if (network.missing.has(path)) return new Response("gone", { status: 404 });
    return new Response(path === "/without-signal" ? network.page : `fresh ${path}`);
  };
  const place = {
    match: async (path: string) => kept.get(path)?.clone(),
    put: async (path: string, answer: Response) => void kept.set(path, answer),
    keys: async () => [...kept.keys()].map((path) => ({ url: `${ORIGIN}${path}` })),
    delete: async (request: { url: string }) => kept.delete(new URL(request.url).pathname),
  };
  const redirecting = {
    error: () => Response.error(),
    redirect: (path: string) => Response.redirect(`${ORIGIN}${path}`, 302),
  };
  runInNewContext(textOf("public/service-worker.js"), {
    self: {
      addEventListener: (name: string, listener: (event: FakeEvent) => void) => listeners.set(name, listener),
      skipWaiting: async () => undefined,
      clients: { claim: async () => undefined },
      location: { origin: ORIGIN },
    },
    caches: { open: async () => place },
    Response: redirecting,
    URL,
    fetch,
  });
  async function happen(name: string, facts: Partial<FakeEvent> = {}): Promise<Response | null> {
    const work: Promise<unknown>[] = [];
    let answer: Promise<Response> | null = null;
    listeners.get(name)?.({
      ...facts,
      waitUntil: (more) => work.push(more),
      respondWith: (given) => {
        answer = given;
      },
    });
    await Promise.all(work);
    return answer;
  }
  const ask = (path: string, mode = "navigate", method = "GET") =>
    happen("fetch", { request: { method, mode, url: new URL(path, ORIGIN).href } });
  return { kept, asked, network, happen, ask };
}

let worker: ReturnType<typeof startWorker>;

beforeEach(async () => {
  worker = startWorker();
  await worker.happen("install");
});

describe("the page without signal", () => {
  it("is kept with every script and style it names, and is fetched without cookies", () => {
    expect([...worker.kept.keys()].toSorted()).toEqual([
      "/_next/static/chunks/app/(open)/c.js",
      "/_next/static/chunks/b-1.js",
      "/_next/static/css/a.css",
      "/without-signal",
    ]);
    const [page] = worker.asked;
    expect(page).toEqual({ path: "/without-signal", options: { credentials: "omit", cache: "no-store" } });
  });

  it.each(["/", "/family/ath_kit", "/family/ath_kit/throws"])(
    "stands in for %s when there is no answer",
    async (path) => {
      worker.network.isUp = false;
      expect((await worker.ask(path))?.headers.get("location")).toBe(`${ORIGIN}/without-signal`);
      expect(await (await worker.ask("/without-signal"))?.text()).toBe(PAGE);
      expect(await (await worker.ask("/_next/static/chunks/b-1.js", "no-cors"))?.text()).toMatch(/b-1/);
    },
  );

  it("is out of the way while the academy answers", async () => {
    expect(await (await worker.ask("/family/ath_kit/throws"))?.text()).toBe("fresh /family/ath_kit/throws");
  });

  it.each([
    ["a page of the staff", "/today", "navigate", "GET"],
    ["a procedure", "/api/trpc/throwing.view", "cors", "GET"],
    ["a command", "/family/ath_kit", "navigate", "POST"],
    ["a clip", "/api/clips/clp_1", "no-cors", "GET"],
    ["another site", "https://elsewhere.example/family/x", "navigate", "GET"],
  ])("leaves %s alone", async (_, path, mode, method) => {
    worker.network.isUp = false;
    expect(await worker.ask(path, mode, method)).toBeNull();
  });

  it("is kept anew when a page asks for it, and what it names no longer goes", async () => {
    worker.network.page = '<script src="/_next/static/chunks/d-2.js"></script>';
    await worker.happen("message", { data: "keep-page" });
    expect([...worker.kept.keys()].toSorted()).toEqual(["/_next/static/chunks/d-2.js", "/without-signal"]);
  });

  it.each(["offline", "a missing script"])(
    "stays as it was kept when it cannot be had anew: %s",
    async (why) => {
      const before = [...worker.kept.keys()];
      worker.network.page = '<script src="/_next/static/chunks/d-2.js"></script>';
      if (why === "offline") worker.network.isUp = false;
      else worker.network.missing.add("/_next/static/chunks/d-2.js");
      await worker.happen("message", { data: "keep-page" });
      expect([...worker.kept.keys()]).toEqual(before);
      expect(await worker.kept.get("/without-signal")?.clone().text()).toBe(PAGE);
    },
  );

  it("is not pretended where it was never kept", async () => {
    const bare = startWorker();
    bare.network.isUp = false;
    expect((await bare.ask("/family/ath_kit/throws"))?.type).toBe("error");
  });
});
