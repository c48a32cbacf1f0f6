import { randomBytes } from "node:crypto";
import { mkdirSync } from "node:fs";
import { FileStore } from "@tus/file-store";
import { Metadata, Server, type Upload } from "@tus/server";
import { DEFAULT_RESERVE, hasRoomFor } from "./clip-store";
import {
  answered,
  noRoom,
  notFound,
  refused,
  takenState,
  tooBig,
  turnedAway,
  wrongMethod,
} from "./upload-answers";
import {
  isUploadId,
  markTaken,
  outstandingBytes,
  removeUpload,
  type TakenUpload,
  takenUpload,
  type UploadAnswer,
  type UploadMetadata,
} from "./upload-folder";
import type { UploadSettings } from "./upload-settings";

/** Name under which the server itself notes the creator; what a sender writes there is overwritten. */
const OWNER_KEY = "sentBy";

type KnownUpload = { personId: string; metadata: UploadMetadata | null; taken: TakenUpload | null };

/**
 * Receives clips in pieces by the tus protocol: a dropped connection, or a server started anew, goes on at the byte
 * it had reached. Make one for a folder and keep it.
 *
 * Every request is authorised, not only the first, and an upload answers only to the person who began it; for
 * anybody else it does not exist. A file that is refused leaves nothing behind. A file that is taken leaves a small
 * note, so that a sender whose connection dropped at the last byte hears the same answer instead of sending again.
 */
export class UploadServer {
  readonly #settings: UploadSettings;
  readonly #store: FileStore;
  readonly #tus: Server;
  readonly #senders = new WeakMap<Request, string>();
  readonly #finishing = new Map<string, Promise<UploadAnswer>>();

  /** Makes the folder `settings.baseDir` if need be. @throws the system's error when it cannot. */
  constructor(settings: UploadSettings) {
    mkdirSync(settings.baseDir, { recursive: true, mode: 0o700 });
    this.#settings = settings;
    this.#store = new FileStore({ directory: settings.baseDir });
    this.#tus = new Server({
      path: settings.publicPath,
      datastore: this.#store,
      maxSize: settings.maxBytes,
      relativeLocation: true,
      allowedOrigins: [],
      namingFunction: () => randomBytes(32).toString("hex"),
      onUploadCreate: async (request, { metadata }) => ({
        metadata: { ...metadata, [OWNER_KEY]: this.#senders.get(request) ?? null },
      }),
    });
  }

  /** Answers one request under `publicPath`. Only the method itself counts, never a header that overrides it. */
  async handle(request: Request): Promise<Response> {
    if (request.method === "POST") return this.#create(request);
    if (["PATCH", "HEAD", "DELETE"].includes(request.method)) return this.#continue(request);
    return wrongMethod();
  }

  async #create(request: Request): Promise<Response> {
    const { authorise, maxBytes } = this.#settings;
    const authority = await authorise(request, null, sentMetadata(request));
    if (!authority.ok) return turnedAway(authority.status);
    const byteCount = Number(request.headers.get("upload-length") ?? Number.NaN);
    if (!Number.isSafeInteger(byteCount) || byteCount < 0) {
      return refused(400, "no_length", "The length of the file is missing.");
    }
    if (byteCount > maxBytes) return tooBig(byteCount, maxBytes);
    if (!(await this.#hasRoomToBegin(byteCount))) return noRoom();
    this.#senders.set(request, authority.personId);
    const response = await this.#tus.handleWeb(request);
    const uploadId = response.headers.get("location")?.split("/").at(-1);
    return uploadId === undefined ? response : this.#answer(uploadId, authority.personId, response);
  }

  async #continue(request: Request): Promise<Response> {
    const uploadId = new URL(request.url).pathname.split("/").at(-1) ?? "";
    const own = await this.#ownUpload(request, uploadId);
    if (own instanceof Response) return own;
    if (own.taken !== null) return this.#repeat(request, uploadId, own.taken);
    if (request.method === "PATCH" && !(await this.#hasRoomFor(request))) return noRoom();
    const response = await this.#tus.handleWeb(request);
    if (request.method === "DELETE" || !response.ok) return response;
    const answer = await this.#answer(uploadId, own.personId, response);
    if (request.method === "PATCH") return answer;
    return answer.ok ? response : new Response(null, answer); // HEAD: the state, or that there is none any more
  }

  /** The asker's own upload with this id, or the answer that turns them away. */
  async #ownUpload(request: Request, uploadId: string): Promise<KnownUpload | Response> {
    const known = isUploadId(uploadId) ? await this.#find(uploadId) : null;
    const authority = await this.#settings.authorise(request, uploadId, known?.metadata ?? null);
    if (!authority.ok) return authority.status === 401 ? turnedAway(401) : notFound();
    return known?.personId === authority.personId ? known : notFound();
  }

  /** What is kept under this id, once an answer that is being made is there. */
  async #find(uploadId: string): Promise<KnownUpload | null> {
    await this.#finishing.get(uploadId)?.catch(() => undefined); // the sender it is made for hears of its error
    const taken = await takenUpload(this.#settings.baseDir, uploadId);
    if (taken !== null) return { personId: taken.personId, metadata: null, taken };
    const upload = await this.#findUpload(uploadId);
    const personId = upload?.metadata?.[OWNER_KEY] ?? null;
    return personId === null ? null : { personId, metadata: withoutOwner(upload?.metadata), taken: null };
  }

  /** Gives an upload's answer when it is whole, else the protocol's own. */
  async #answer(uploadId: string, personId: string, response: Response): Promise<Response> {
    const upload = await this.#findUpload(uploadId);
    if (upload === null || upload.offset !== upload.size) return response;
    const finishing = this.#finishing.get(uploadId) ?? this.#finish(upload, personId);
    this.#finishing.set(uploadId, finishing);
    try {
      return answered(await finishing, response.headers);
    } finally {
      this.#finishing.delete(uploadId);
    }
  }

  async #finish(upload: Upload, personId: string): Promise<UploadAnswer> {
    const { baseDir, onFinished } = this.#settings;
    const { id: uploadId, offset: byteCount } = upload;
    const path = upload.storage?.path ?? "";
    const metadata = withoutOwner(upload.metadata);
    const answer = await onFinished({ uploadId, path, byteCount, metadata, personId });
    if (answer.status >= 400) await removeUpload(baseDir, uploadId);
    else await markTaken(baseDir, uploadId, { personId, byteCount, answer });
    return answer;
  }

  /** What a sender hears who comes back to an upload that was already taken. */
  async #repeat(request: Request, uploadId: string, taken: TakenUpload): Promise<Response> {
    if (request.method === "HEAD") return takenState(taken);
    if (request.method === "PATCH") return answered(taken.answer, takenState(taken).headers);
    await removeUpload(this.#settings.baseDir, uploadId);
    return new Response(null, { status: 204, headers: { "Tus-Resumable": "1.0.0" } });
  }

  /** The upload under way with this id, or null. */
  async #findUpload(uploadId: string): Promise<Upload | null> {
    try {
      return await this.#store.getUpload(uploadId);
    } catch (error) {
      if (error instanceof Error) throw error;
      return null; // the store throws plain objects for an upload it does not have
    }
  }

  /** The copy that is served lies beside the original, so a clip needs its length twice. */
  async #hasRoomToBegin(byteCount: number): Promise<boolean> {
    const { baseDir, reserve = DEFAULT_RESERVE } = this.#settings;
    return hasRoomFor(baseDir, byteCount * 2 + (await outstandingBytes(baseDir)), reserve);
  }

  async #hasRoomFor(request: Request): Promise<boolean> {
    const { baseDir, reserve = DEFAULT_RESERVE } = this.#settings;
    return hasRoomFor(baseDir, Number(request.headers.get("content-length") ?? 0), reserve);
  }
}

/** What the sender says of the file; null when it says nothing or nothing readable. */
function sentMetadata(request: Request): UploadMetadata | null {
  const header = request.headers.get("upload-metadata");
  try {
    return header === null ? null : withoutOwner(Metadata.parse(header));
  } catch {
    return null; // the protocol's own check answers 400
  }
}

function withoutOwner(metadata: UploadMetadata | undefined): UploadMetadata {
  const { [OWNER_KEY]: _owner, ...rest } = metadata ?? {};
  return rest;
}
