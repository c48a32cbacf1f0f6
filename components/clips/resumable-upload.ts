import type { DetailedError, PreviousUpload, Upload as TusUpload } from "tus-js-client";
import { CONVERSION_STATES, type ConversionState } from "@/server/domain/clips/clip";

/** One piece of an upload, in bytes: what a phone on a field sends in a few seconds. Common practice, no source. */
const PIECE_BYTES = 6_000_000;

/** Waits between tries after the connection broke, in milliseconds. Common practice, no source. */
const RETRY_AFTER_MS = [0, 1000, 3000, 5000, 10_000, 20_000, 30_000];

/** Statuses at which the same piece may be sent again: in use elsewhere, or a server that is starting anew. */
const PASSING = [409, 423, 500, 502, 503, 504];

/** What a sender hears of an upload. */
export interface UploadListener {
  onProgress: (sentBytes: number) => void;
  /** The connection broke; it is tried again without anybody's doing. */
  onBroken: () => void;
  /** All tries were in vain; it can be gone on with later. */
  onStopped: () => void;
  /** Refused for good, in words. */
  onRefused: (sentence: string) => void;
  /**
   * The clip is in. `clipId` is null where the answer was lost; then it is found by `uploadId`. `conversion` tells where
   * the copy stands that every browser draws.
   */
  onDone: (arrived: { clipId: string | null; uploadId: string; conversion: ConversionState | null }) => void;
}

/** An upload in hand. */
export interface ResumableUpload {
  start: () => void;
  pause: () => Promise<void>;
  /** Gives it up: what was sent is deleted. */
  giveUp: () => Promise<void>;
}

/** An upload that this browser began and did not end. */
export interface HalfSent {
  key: string;
  byteCount: number;
  begunAtMs: number;
  url: string;
}

const KEY = "slabside";

/** The same file for the same athlete is the same upload, also after the page was closed. */
function fingerprintOf(file: File, athleteId: string): string {
  return [KEY, athleteId, file.name, file.size, file.lastModified].join("-");
}

/**
 * Readies the sending of a file: in pieces, going on where it stopped after a dropped connection or a closed page.
 */
export async function resumableUpload(
  file: File,
  athleteId: string,
  listener: UploadListener,
): Promise<ResumableUpload> {
  const { Upload } = await import("tus-js-client");
  const upload: TusUpload = new Upload(file, {
    endpoint: "/api/uploads",
    chunkSize: PIECE_BYTES,
    retryDelays: RETRY_AFTER_MS,
    metadata: { athleteId },
    fingerprint: async () => fingerprintOf(file, athleteId),
    removeFingerprintOnSuccess: true,
    onProgress: (sentBytes) => listener.onProgress(sentBytes),
    onShouldRetry: (error) => {
      const isPassing = mayPass(error);
      if (isPassing) listener.onBroken();
      return isPassing;
    },
    onError: (error) => {
      if (!("originalResponse" in error) || mayPass(error)) return listener.onStopped();
      void forget(upload);
      listener.onRefused(sentenceOf(error));
    },
    onSuccess: ({ lastResponse }) =>
      listener.onDone({
        clipId: fieldOf(lastResponse.getBody(), "clipId"),
        conversion: conversionIn(lastResponse.getBody()),
        uploadId: upload.url?.split("/").at(-1) ?? "",
      }),
  });
  const [before] = await upload.findPreviousUploads();
  if (before) upload.resumeFromPreviousUpload(before);
  return { start: () => upload.start(), pause: () => upload.abort(), giveUp: () => upload.abort(true) };
}

function mayPass(error: DetailedError): boolean {
  const status = error.originalResponse?.getStatus() ?? 0;
  return status === 0 || PASSING.includes(status);
}

async function forget(upload: TusUpload): Promise<void> {
  for (const { urlStorageKey } of await upload.findPreviousUploads()) {
    await upload.options.urlStorage?.removeUpload(urlStorageKey);
  }
}

function sentenceOf(error: DetailedError): string {
  return (
    fieldOf(error.originalResponse?.getBody() ?? "", "sentence") ??
    "The clip was not taken. Nothing was kept. Try again, or tell the academy."
  );
}

function fieldOf(body: string, name: string): string | null {
  try {
    const value: unknown = JSON.parse(body)[name];
    return typeof value === "string" ? value : null;
  } catch {
    return null;
  }
}

function conversionIn(body: string): ConversionState | null {
  const told = fieldOf(body, "conversion");
  return CONVERSION_STATES.find((state) => state === told) ?? null;
}

/** The uploads for an athlete that this browser began and did not end, the latest first. */
export async function halfSentUploads(athleteId: string): Promise<HalfSent[]> {
  const { defaultOptions } = await import("tus-js-client");
  const all = await defaultOptions.urlStorage.findAllUploads();
  return all
    .filter((upload) => upload.metadata.athleteId === athleteId)
    .map((upload) => halfSent(upload))
    .sort((a, b) => b.begunAtMs - a.begunAtMs);
}

function halfSent({ urlStorageKey, size, creationTime, uploadUrl }: PreviousUpload): HalfSent {
  const begunAtMs = Date.parse(creationTime);
  return { key: urlStorageKey, byteCount: size ?? 0, begunAtMs, url: uploadUrl ?? "" };
}

/** Gives up an upload begun before: what was sent is deleted, and this browser forgets it. */
export async function forgetHalfSent({ key, url }: HalfSent): Promise<void> {
  const { Upload, defaultOptions } = await import("tus-js-client");
  if (url) await Upload.terminate(url).catch(() => undefined);
  await defaultOptions.urlStorage.removeUpload(key);
}
