import { probeRefusalInWords } from "@/server/domain/clips/probe";
import type { TakenUpload, UploadAnswer } from "./upload-folder";

const COMMON_HEADERS = { "Tus-Resumable": "1.0.0", "Cache-Control": "no-store" };

/** A JSON answer with the headers every answer to a tus client carries, over those of `headers`. */
export function answered(answer: UploadAnswer, headers: HeadersInit = {}): Response {
  const all = new Headers(headers);
  for (const [name, value] of Object.entries(COMMON_HEADERS)) all.set(name, value);
  all.delete("Content-Length");
  all.set("Content-Type", "application/json");
  return new Response(JSON.stringify(answer.body), { status: answer.status, headers: all });
}

/** A refusal: `problem` for the program, `sentence` for the person. */
export const refused = (status: number, problem: string, sentence: string): Response =>
  answered({ status, body: { problem, sentence } });

/** The one answer for an upload that does not exist, never existed, or is somebody else's. */
export const notFound = (): Response => refused(404, "not_found", "There is no such upload.");

/** Turns somebody away before anything is looked at. */
export const turnedAway = (status: 401 | 403 | 404): Response => {
  if (status === 401) return refused(401, "signed_out", "Sign in to send a clip.");
  if (status === 403) return refused(403, "not_allowed", "You may not send a clip here.");
  return notFound();
};

/** Refuses a file before a byte of it was sent because it is larger than clips may be. */
export const tooBig = (byteCount: number, maxBytes: number): Response =>
  refused(413, "too_big", probeRefusalInWords({ kind: "too_big", byteCount, maxBytes }));

/** Refuses because the disk would be left with less than its reserve. */
export const noRoom = (): Response =>
  refused(
    507,
    "no_room",
    "There is no room for another clip on the academy's disk. Please tell the academy.",
  );

/** Refuses a method that is no part of sending a clip. */
export function wrongMethod(): Response {
  const answer = refused(405, "wrong_method", "An upload cannot be asked for that.");
  answer.headers.set("Allow", "POST, PATCH, HEAD, DELETE");
  return answer;
}

/** The state of an upload that has been taken, as a tus client asks for it: all of it is here. */
export function takenState(taken: TakenUpload): Response {
  const byteCount = String(taken.byteCount);
  const headers = { ...COMMON_HEADERS, "Upload-Offset": byteCount, "Upload-Length": byteCount };
  return new Response(null, { status: 200, headers });
}
