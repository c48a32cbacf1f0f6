import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import type { ReadableStream as NodeReadableStream } from "node:stream/web";

type Handler = (request: Request) => Promise<Response>;

/** A real HTTP server on loopback in front of a Request -> Response function, as a framework would put it there. */
export async function startWebServer(handle: Handler): Promise<{ url: string; stop: () => Promise<void> }> {
  const server = createServer((incoming, outgoing) => void answer(handle, incoming, outgoing));
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  const stop = () =>
    new Promise<void>((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    });
  return { url: `http://127.0.0.1:${port}`, stop };
}

async function answer(handle: Handler, incoming: IncomingMessage, outgoing: ServerResponse): Promise<void> {
  const gone = new AbortController();
  outgoing.once("close", () => gone.abort());
  try {
    const response = await handle(webRequest(incoming, gone.signal));
    outgoing.writeHead(response.status, Object.fromEntries(response.headers));
    await send(response, outgoing);
  } catch {
    outgoing.destroy();
  }
}

/** Ends the body when the connection does. */
async function send(response: Response, outgoing: ServerResponse): Promise<void> {
  if (response.body === null) return void outgoing.end();
  await pipeline(Readable.fromWeb(response.body as NodeReadableStream), outgoing);
}

function webRequest(incoming: IncomingMessage, signal: AbortSignal): Request {
  const headers = new Headers();
  for (const [name, value] of Object.entries(incoming.headers)) {
    if (value !== undefined) headers.set(name, String(value));
  }
  const method = incoming.method ?? "GET";
  const hasBody = method !== "GET" && method !== "HEAD" && method !== "DELETE";
  const body = hasBody ? (Readable.toWeb(incoming) as ReadableStream<Uint8Array>) : undefined;
  const url = `http://${incoming.headers.host ?? "localhost"}${incoming.url ?? "/"}`;
  const init: RequestInit & { duplex: "half" } = { method, headers, body, signal, duplex: "half" };
  return new Request(url, init);
}
