import { routes } from "./clip-routes";

const ORIGIN = "http://academy.test";

/** A request of the sender's browser to the academy's upload address. */
function request(method: string, path: string, headers: Record<string, string>, body?: Uint8Array): Request {
  const all = new Headers({ "tus-resumable": "1.0.0", "sec-fetch-site": "same-origin", ...headers });
  if (body) all.set("content-type", "application/offset+octet-stream");
  return new Request(`${ORIGIN}${path}`, {
    method,
    headers: all,
    ...(body ? { body: Buffer.from(body) } : {}),
  });
}

/** Begins an upload for an athlete and returns the academy's answer. */
export function beginUpload(athleteId: string, byteCount: number, headers = {}): Promise<Response> {
  const metadata = `athleteId ${Buffer.from(athleteId).toString("base64")}`;
  const told = { "upload-length": String(byteCount), "upload-metadata": metadata, ...headers };
  return routes.receiveUpload(request("POST", "/api/uploads", told));
}

/** Sends one piece of an upload. */
export function sendPiece(path: string, offset: number, piece: Uint8Array): Promise<Response> {
  return routes.receiveUpload(request("PATCH", path, { "upload-offset": String(offset) }, piece));
}

/** Asks how far an upload has come. */
export const askOffset = (path: string): Promise<Response> => routes.receiveUpload(request("HEAD", path, {}));

/** Gives an upload up. */
export const giveUp = (path: string): Promise<Response> => routes.receiveUpload(request("DELETE", path, {}));

/** Sends a whole file in pieces and returns the answer to the last. */
export async function uploadWhole(
  athleteId: string,
  bytes: Uint8Array,
  pieceBytes = 2_000_000,
): Promise<{ path: string; response: Response }> {
  const begun = await beginUpload(athleteId, bytes.byteLength);
  const path = begun.headers.get("location") ?? "";
  let response = begun;
  for (let offset = 0; offset < bytes.byteLength && response.ok; offset += pieceBytes) {
    response = await sendPiece(path, offset, bytes.subarray(offset, offset + pieceBytes));
  }
  return { path, response };
}
