import { z } from "zod";
import { PAIN_KINDS } from "@/server/domain/throwing/pain";
import { THROW_KINDS } from "@/server/domain/throwing/throw-entry";

const count = z.number();

/** Throws as the log takes them. */
export const throwsToLog = z.strictObject({
  athleteId: z.string(),
  thrownOn: z.string(),
  kind: z.enum(THROW_KINDS),
  pitches: count,
  game: z
    .strictObject({
      outs: count.nullable(),
      inningsCaught: count.nullable(),
      pitchesAtLastBatter: count.nullable(),
      intentionalWalks: count,
      teamId: z.string().nullable(),
      opponent: z.string(),
    })
    .nullable(),
  pain: z.strictObject({ kind: z.enum(PAIN_KINDS), feltOn: z.string(), note: z.string() }).nullable(),
});

/** See {@link throwsToLog}. */
export type ThrowsToLog = z.infer<typeof throwsToLog>;

/**
 * Throws that are on this device and not known to be on the log yet. `id` is made once and goes with every try, so that
 * they arrive once; `problem` is why the academy refused them, until somebody deals with it.
 */
const keptThrows = z.strictObject({
  id: z.string(),
  personId: z.string(),
  givenName: z.string(),
  throws: throwsToLog,
  problem: z.string().nullable(),
});

/** See {@link keptThrows}. */
export type KeptThrows = z.infer<typeof keptThrows>;

/** What became of one try to send. `later`: no answer, or none that is about these throws. */
export type Sending =
  | { kind: "sent"; words: string }
  | { kind: "refused"; sentence: string }
  | { kind: "later" };

/** The most one device keeps, all people together: a season's weekends without signal. Common practice, no source. */
export const MOST_KEPT = 50;

/** Where a device keeps text: `localStorage`, which other pages of the academy share. */
export type DeviceStore = Pick<Storage, "getItem" | "setItem">;

const PLACE = "slabside.throws";

/** Keeps throws on this device until the academy has them. Everything is read anew from the store, which tabs share. */
export class ThrowKeeper {
  private readonly listeners = new Set<() => void>();
  private read: { text: string | null; rows: KeptThrows[] } = { text: null, rows: [] };
  private sending: Promise<void> | null = null;

  constructor(private readonly store: DeviceStore) {}

  /** Calls back after every change made here, and by {@link changedElsewhere}. @returns what ends it */
  readonly listen = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** Another tab changed the store. */
  readonly changedElsewhere = (): void => this.told();

  /** Everything kept, oldest first; the same list until something changes. What cannot be read is left out. */
  readonly all = (): readonly KeptThrows[] => {
    const text = textIn(this.store);
    if (text !== this.read.text) this.read = { text, rows: rowsIn(text) };
    return this.read.rows;
  };

  /** What one person kept: nobody else on the device sees or sends it. */
  of(personId: string): KeptThrows[] {
    return this.all().filter((row) => row.personId === personId);
  }

  /** Keeps throws. @returns false when the device has no room or keeps nothing: then nothing changed */
  keep(row: KeptThrows): boolean {
    const others = this.all().filter((each) => each.id !== row.id);
    return others.length < MOST_KEPT && this.write([...others, row]);
  }

  /** Forgets throws: they arrived, or whoever entered them gives them up. */
  drop(id: string): void {
    this.write(this.all().filter((row) => row.id !== id));
  }

  /** Takes away why they were refused, so that they are sent once more. */
  retry(id: string): void {
    this.mark(id, null);
  }

  /**
   * Sends what a person kept and nobody refused, oldest first, one at a time, and stops when there is no answer. What
   * arrived is dropped; what was refused stays with the reason. Called again meanwhile, it does nothing more.
   * @param sent called for each that arrived
   */
  async send(
    personId: string,
    send: (row: KeptThrows) => Promise<Sending>,
    sent: (row: KeptThrows) => void,
  ): Promise<void> {
    this.sending ??= this.sendAll(personId, send, sent).finally(() => {
      this.sending = null;
    });
    await this.sending;
  }

  private async sendAll(
    personId: string,
    send: (row: KeptThrows) => Promise<Sending>,
    sent: (row: KeptThrows) => void,
  ): Promise<void> {
    for (const row of this.of(personId).filter((each) => each.problem === null)) {
      const outcome = await send(row);
      if (outcome.kind === "later") return;
      if (outcome.kind === "refused") this.mark(row.id, outcome.sentence);
      else this.drop(row.id);
      if (outcome.kind === "sent") sent(row);
    }
  }

  private mark(id: string, problem: string | null): void {
    this.write(this.all().map((row) => (row.id === id ? { ...row, problem } : row)));
  }

  private write(rows: readonly KeptThrows[]): boolean {
    try {
      this.store.setItem(PLACE, JSON.stringify(rows));
    } catch {
      return false;
    }
    this.told();
    return true;
  }

  private told(): void {
    for (const listener of this.listeners) listener();
  }
}

function textIn(store: DeviceStore): string | null {
  try {
    return store.getItem(PLACE);
  } catch {
    return null;
  }
}

function rowsIn(text: string | null): KeptThrows[] {
  try {
    const rows: unknown = JSON.parse(text ?? "[]");
    if (!Array.isArray(rows)) return [];
    return rows.flatMap((row) => {
      const read = keptThrows.safeParse(row);
      return read.success ? [read.data] : [];
    });
  } catch {
    return [];
  }
}
