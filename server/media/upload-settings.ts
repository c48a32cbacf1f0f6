import type { Reserve } from "./clip-store";
import type { UploadAnswer, UploadMetadata } from "./upload-folder";

/** Who is sending, or the status to turn them away with. */
export type UploadAuthority = { ok: true; personId: string } | { ok: false; status: 401 | 403 | 404 };

/** A file that has arrived whole. It lies at `path` until the receiver moves it away. */
export type FinishedUpload = {
  uploadId: string;
  path: string;
  byteCount: number;
  metadata: UploadMetadata;
  personId: string;
};

export type UploadSettings = {
  /** The address uploads are made under, without a slash at the end, such as `/api/uploads`. */
  publicPath: string;
  /** Where half-sent files lie: on the same file system as the clips, and nothing else in it. */
  baseDir: string;
  maxBytes: number;
  reserve?: Reserve;
  /**
   * Asked on creation (`uploadId` null, `metadata` as sent) and again on every later request (`metadata` as stored;
   * null when there is no such upload).
   */
  authorise: (
    request: Request,
    uploadId: string | null,
    metadata: UploadMetadata | null,
  ) => Promise<UploadAuthority>;
  /**
   * Called once the last byte is there; called again for the same `uploadId` only when it threw or the server died
   * in it. A status of 400 or more refuses the file: it is deleted, and the body (`problem`, `sentence`) goes to the sender.
   */
  onFinished: (upload: FinishedUpload) => Promise<UploadAnswer>;
};
