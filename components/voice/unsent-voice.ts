import { createStore, del, entries, get, setMany, type UseStore } from "idb-keyval";

/** What a spoken note was said on: a line of a round's draft. */
export interface VoicePlace {
  roundId: string;
  lineId: string;
}

/** A note that the academy has not got yet, and when it was spoken. */
interface UnsentVoice {
  spoken: Blob;
  atMs: number;
}

/** As long as a round may wait, and longer than a line to the academy is gone. */
export const UNSENT_FOR_MS = 14 * 86_400_000;

/** Two reviews full of notes; an older one makes room. */
export const MOST_UNSENT = 20;

let opened: UseStore | undefined;

/** Asked for with each use: a browser may refuse it, and a private window forgets it. */
function store(): UseStore {
  opened ??= createStore("slabside-unsent-voice", "notes");
  return opened;
}

const keyOf = ({ roundId, lineId }: VoicePlace) => `${roundId} ${lineId}`;

/**
 * Keeps a note on this device until the academy has it; what is older than two weeks or beyond twenty makes room.
 * @returns whether it is kept; a browser may refuse
 */
export async function rememberUnsent(place: VoicePlace, spoken: Blob, nowMs: number): Promise<boolean> {
  try {
    const key = keyOf(place);
    await setMany([[key, { spoken, atMs: nowMs }]], store());
    const others = (await entries<string, UnsentVoice>(store())).filter(([each]) => each !== key);
    const latest = others.sort(([, a], [, b]) => b.atMs - a.atMs);
    const gone = latest.filter(([, { atMs }], at) => at >= MOST_UNSENT - 1 || atMs < nowMs - UNSENT_FOR_MS);
    for (const [each] of gone) await del(each, store());
    return true;
  } catch {
    return false;
  }
}

/** The note that was spoken here and is not with the academy; null when there is none or it is too old. */
export async function unsentAt(place: VoicePlace, nowMs: number): Promise<Blob | null> {
  try {
    const found = await get<UnsentVoice>(keyOf(place), store());
    return found && found.atMs >= nowMs - UNSENT_FOR_MS ? found.spoken : null;
  } catch {
    return null;
  }
}

/** The lines of a round that have such a note. */
export async function unsentOf(roundId: string, nowMs: number): Promise<Set<string>> {
  try {
    const all = await entries<string, UnsentVoice>(store());
    const ofRound = all.filter(
      ([key, { atMs }]) => key.startsWith(`${roundId} `) && atMs >= nowMs - UNSENT_FOR_MS,
    );
    return new Set(ofRound.map(([key]) => key.slice(roundId.length + 1)));
  } catch {
    return new Set();
  }
}

/** Lets one go: it is with the academy, was spoken anew, or is not wanted. */
export async function forgetUnsent(place: VoicePlace): Promise<void> {
  await del(keyOf(place), store()).catch(() => undefined);
}

/** Lets all of them go: who signs out leaves nothing that was said on a device. */
export async function forgetAllUnsent(): Promise<void> {
  try {
    for (const [key] of await entries<string, UnsentVoice>(store())) await del(key, store());
  } catch {
    /* Nothing could be kept here in the first place. */
  }
}
