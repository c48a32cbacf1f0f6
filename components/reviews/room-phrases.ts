/** What a key does to a field that has usual words beside it. */
export type PhraseAct = { kind: "pick"; words: string } | { kind: "done" } | null;

/** A key, as far as it matters here. */
export interface PhraseKey {
  key: string;
  code: string;
  altKey: boolean;
  shiftKey: boolean;
  ctrlKey: boolean;
  metaKey: boolean;
  /** A letter is still being put together; its Enter ends that and no more. */
  isComposing: boolean;
}

/**
 * Down and Up walk through the usual words while the field is empty or holds one of them; Alt with a digit picks one in
 * any case, whatever letter the keyboard makes of it; Enter and Escape are done, Shift with Enter is a new line.
 */
export function phraseAct(key: PhraseKey, text: string, words: readonly string[]): PhraseAct {
  if (key.isComposing || key.ctrlKey || key.metaKey) return null;
  if (key.altKey) return pick(words[digitOf(key.code) - 1]);
  if (key.key === "Escape" || (key.key === "Enter" && !key.shiftKey)) return { kind: "done" };
  return pick(beside(key.key, text, words));
}

/** The usual words before or after the ones that stand there; none once something of one's own is written. */
function beside(key: string, text: string, words: readonly string[]): string | undefined {
  const at = words.indexOf(text);
  const isOwn = at === -1 && text.trim() !== "";
  if (isOwn || (key !== "ArrowDown" && key !== "ArrowUp")) return undefined;
  if (key === "ArrowDown") return words[at + 1];
  return at === -1 ? words.at(-1) : words[at - 1];
}

function digitOf(code: string): number {
  return Number(/^(?:Digit|Numpad)([1-9])$/.exec(code)?.[1] ?? 0);
}

function pick(words: string | undefined): PhraseAct {
  return words === undefined ? null : { kind: "pick", words };
}
