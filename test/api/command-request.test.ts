import { describe, expect, it } from "vitest";
import { commandRequest } from "@/server/api/command-request";
import { callerAddress } from "@/server/auth/caller-address";

const HEADERS = {
  host: "academy.example",
  origin: "https://academy.example",
  "sec-fetch-site": "same-origin",
  "content-type": "application/json",
  "idempotency-key": "0b5a3f0e-1111-4222-8333-444455556666",
};

const posted = (headers: Record<string, string>, body: BodyInit = '{"json":{}}') =>
  commandRequest(
    new Request("https://academy.example/api/trpc/rounds.take", {
      method: "POST",
      headers: { ...HEADERS, ...headers },
      body,
      ...({ duplex: "half" } as object),
    }),
  );

/** A body that says nothing of its length beforehand. */
function unannounced(byteCount: number): ReadableStream<Uint8Array> {
  const whole = new Uint8Array(byteCount).fill(32);
  return new ReadableStream({
    start(controller) {
      controller.enqueue(whole);
      controller.close();
    },
  });
}

describe("a command over HTTP", () => {
  it("is passed on with its body and headers", async () => {
    const accepted = (await posted({}, '{"json":{"roundId":"rnd_1"}}')) as Request;
    expect(accepted).toBeInstanceOf(Request);
    expect(await accepted.text()).toBe('{"json":{"roundId":"rnd_1"}}');
    expect(accepted.headers.get("idempotency-key")).toBe(HEADERS["idempotency-key"]);
  });

  it.each([
    ["from another site, by its fetch", { "sec-fetch-site": "cross-site" }, 403],
    ["from a sister site", { "sec-fetch-site": "same-site" }, 403],
    ["from another site, by its origin", { origin: "https://evil.example" }, 403],
    ["from no site at all", { origin: "null" }, 403],
    ["as a form", { "content-type": "application/x-www-form-urlencoded" }, 415],
    ["without an id", { "idempotency-key": "" }, 400],
    ["with an id that is none", { "idempotency-key": "again" }, 400],
  ])("is turned away %s", async (_how, headers, status) => {
    const answer = (await posted(headers)) as Response;
    expect(answer.status).toBe(status);
    expect((await answer.json()).sentence).toContain("Nothing was changed.");
  });

  it("is turned away when it is too long, also when it never said how long it is", async () => {
    expect(((await posted({}, unannounced(1_000_001))) as Response).status).toBe(413);
    expect((await posted({}, unannounced(1_000_000))) instanceof Request).toBe(true);
  });
});

describe("the address of a caller", () => {
  it.each([
    ["203.0.113.9", "203.0.113.9"],
    ["6.6.6.6, 203.0.113.9", "203.0.113.9"],
    ["", "local"],
    [null, "local"],
  ])("of %j is the one the proxy saw", (header, address) => {
    expect(callerAddress(header)).toBe(address);
  });
});
