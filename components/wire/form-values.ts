/** What a form holds under a name, blank ends cut off; empty when it is not there. */
export function textOf(data: FormData, name: string): string {
  return String(data.get(name) ?? "").trim();
}

/** The same, or null when it is empty. */
export function textOrNull(data: FormData, name: string): string | null {
  return textOf(data, name) || null;
}

/** The whole or decimal number under a name, or null when it is empty or no number. */
export function numberOrNull(data: FormData, name: string): number | null {
  const text = textOf(data, name);
  return text === "" || Number.isNaN(Number(text)) ? null : Number(text);
}
