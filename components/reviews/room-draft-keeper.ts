/** How what is being written stands. */
export type DraftStatus =
  | { kind: "saved"; savedAtMs: number | null }
  | { kind: "saving" }
  /** The academy cannot be reached; it is tried again by itself. */
  | { kind: "offline" }
  /** A newer draft was saved elsewhere: one of the two must be chosen. */
  | { kind: "conflict" }
  /** It cannot be saved any more, and why. */
  | { kind: "stopped"; sentence: string };

/** What became of one try to save. */
export type SaveOutcome =
  | { kind: "saved"; version: number; savedAtMs: number }
  | { kind: "unreachable" }
  | { kind: "changed_meanwhile" }
  | { kind: "refused"; sentence: string };

/** How long a draft rests before it is saved: a word is typed, and it is on the server within the second. */
export const REST_MS = 400;

/** Pauses between tries while the academy cannot be reached; the last goes on. */
const RETRY_MS = [1000, 2000, 4000, 8000] as const;

/** Keeps a draft on the server as it is written: a short rest after each change, one save at a time, again when offline. */
export class DraftKeeper<Document> {
  status: DraftStatus;
  private timer: ReturnType<typeof setTimeout> | null = null;
  private running: Promise<void> | null = null;
  private tries = 0;
  private readonly listeners = new Set<() => void>();
  private saved: Document;
  /** The document that was last sent, whether or not its answer came. */
  lastTried: Document | null = null;

  constructor(
    public document: Document,
    private version: number,
    savedAtMs: number | null,
    private readonly save: (document: Document, version: number) => Promise<SaveOutcome>,
  ) {
    this.saved = document;
    this.status = { kind: "saved", savedAtMs };
  }

  /** Calls back after every change of the document or its status. @returns what ends it */
  readonly listen = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** Writes a change down here at once, and on the server after a short rest. */
  change(document: Document): void {
    this.document = document;
    this.told();
    if (this.status.kind === "conflict" || this.status.kind === "stopped") return;
    this.schedule(REST_MS);
  }

  get isSaved(): boolean {
    return this.document === this.saved;
  }

  /** Saves now whatever is not saved. @returns the version on the server, or null when it could not be saved */
  async flush(): Promise<number | null> {
    this.cancel();
    await this.running;
    if (!this.isSaved) await this.run();
    return this.isSaved ? this.version : null;
  }

  /** Goes on with the draft that was saved elsewhere. */
  adopt(theirs: { document: Document; version: number; savedAtMs: number }): void {
    this.cancel();
    this.document = theirs.document;
    this.saved = theirs.document;
    this.version = theirs.version;
    this.say({ kind: "saved", savedAtMs: theirs.savedAtMs });
  }

  /** A newer draft is on the server: it is gone on with when nothing is unsaved here, else one of the two must be chosen. */
  catchUp(theirs: { document: Document; version: number; savedAtMs: number }): void {
    if (theirs.version <= this.version || this.running !== null) return;
    if (this.isSaved) this.adopt(theirs);
    else this.overtaken();
  }

  /** The server has said that there is a newer draft. */
  readonly overtaken = (): void => {
    this.cancel();
    this.say({ kind: "conflict" });
  };

  /** Saves this draft over the one that was saved elsewhere. */
  async overwrite(theirVersion: number): Promise<void> {
    this.version = theirVersion;
    this.say({ kind: "saving" });
    await this.run();
  }

  /** Tries again at once, as when the connection is back. */
  retry(): void {
    if (this.status.kind === "offline") this.schedule(0);
  }

  /** Ends what is waiting; a save that is on its way still arrives. */
  close(): void {
    this.cancel();
  }

  private schedule(restMs: number): void {
    this.cancel();
    this.timer = setTimeout(() => void this.run(), restMs);
  }

  private cancel(): void {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = null;
  }

  private async run(): Promise<void> {
    this.cancel();
    await this.running;
    if (this.isSaved) return;
    this.running = this.saveOnce();
    await this.running;
    this.running = null;
  }

  private async saveOnce(): Promise<void> {
    const { document } = this;
    if (this.status.kind !== "offline") this.say({ kind: "saving" });
    this.lastTried = document;
    const outcome = await this.save(document, this.version);
    if (outcome.kind === "saved") {
      this.version = outcome.version;
      this.saved = document;
      this.tries = 0;
      this.say(this.isSaved ? { kind: "saved", savedAtMs: outcome.savedAtMs } : { kind: "saving" });
      if (!this.isSaved) this.schedule(REST_MS);
    } else if (outcome.kind === "unreachable") {
      this.say({ kind: "offline" });
      this.schedule(RETRY_MS[Math.min(this.tries, RETRY_MS.length - 1)] ?? REST_MS);
      this.tries += 1;
    } else {
      this.say(
        outcome.kind === "refused" ? { kind: "stopped", sentence: outcome.sentence } : { kind: "conflict" },
      );
    }
  }

  private say(status: DraftStatus): void {
    this.status = status;
    this.told();
  }

  private told(): void {
    for (const listener of this.listeners) listener();
  }
}
