import { randomBytes } from "node:crypto";
import { DetailedError, Upload } from "tus-js-client";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { scratchFolder } from "../helpers/scratch-folder";
import { sha256Of, UploadDesk } from "../helpers/upload-desk";
import { startWebServer } from "../helpers/web-server";

const desk = new UploadDesk(scratchFolder());
let refuses = false;
let web: Awaited<ReturnType<typeof startWebServer>>;

beforeEach(async () => {
  refuses = false;
  const server = desk.server();
  const refusing = desk.server({
    onFinished: async () => ({ status: 422, body: { problem: "not_video", sentence: "This is no video." } }),
  });
  web = await startWebServer((request) => (refuses ? refusing : server).handle(request));
});
afterEach(() => web.stop());

/** Sends `bytes` with the library the browser uses and resolves to the last answer's body. */
function sendWithClient(bytes: Buffer, person: string | null = "guardian-1"): Promise<string> {
  return new Promise((resolve, reject) => {
    let lastBody = "";
    const upload = new Upload(bytes, {
      endpoint: `${web.url}/api/uploads`,
      chunkSize: 100_000,
      retryDelays: [],
      headers: person === null ? {} : { "x-person": person },
      metadata: { view: "open side" },
      onAfterResponse: (_request, response) => {
        lastBody = response.getBody();
      },
      onSuccess: () => resolve(lastBody),
      onError: reject,
    });
    upload.start();
  });
}

async function refusalOf(sending: Promise<string>): Promise<{ status: number; body: string }> {
  const error: unknown = await sending.then(
    () => new Error("It was taken."),
    (reason) => reason,
  );
  if (!(error instanceof DetailedError)) throw error;
  const { originalResponse } = error;
  return { status: originalResponse?.getStatus() ?? 0, body: originalResponse?.getBody() ?? "" };
}

describe("the sending library of the browser", () => {
  test("sends a clip in pieces and hears what became of it", async () => {
    const bytes = randomBytes(450_123);
    expect(JSON.parse(await sendWithClient(bytes))).toEqual({ clipId: "clip-1" });
    expect(desk.taken).toMatchObject([{ sha256: sha256Of(bytes), metadata: { view: "open side" } }]);
  });

  test("hears the sentence of a refusal at the last byte, and nothing is left", async () => {
    refuses = true;
    const { status, body } = await refusalOf(sendWithClient(randomBytes(150_000)));
    expect([status, JSON.parse(body).sentence]).toEqual([422, "This is no video."]);
    expect(desk.names()).toEqual([]);
  });

  test("hears the sentence of a refusal before the first byte", async () => {
    const tooBig = await refusalOf(sendWithClient(Buffer.alloc(5_000_001)));
    expect([tooBig.status, JSON.parse(tooBig.body).problem]).toEqual([413, "too_big"]);
    const signedOut = await refusalOf(sendWithClient(Buffer.alloc(10), null));
    expect([signedOut.status, JSON.parse(signedOut.body).problem]).toEqual([401, "signed_out"]);
  });
});
