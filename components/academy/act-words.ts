/** Acts whose name does not read as words by itself. */
const ACT_WORDS: Record<string, string> = {
  "academy.started": "Academy started",
  "academy.settings": "Settings saved",
  "account.invitation": "Invitation used",
  "account.reset": "Password reset",
  "account.invited": "Invited",
  "site.hours": "Opening hours set",
  "coach.hours": "Coach’s hours set",
  "coach.away": "Absence written down",
  "coach.back": "Absence taken back",
  "guardians.granted": "Guardians’ view decided",
  "checkpoint.put_aside": "Checkpoint put aside",
  "rate.set": "Price set",
  "rate.removed": "Price taken out",
  "notices.retried": "Notices put back in line",
};

/**
 * An act of the record in words; one without words of its own is read from its name.
 * @example actInWords("role.granted") // "Role granted"
 */
export function actInWords(action: string): string {
  const plain = action
    .replaceAll(/[._]/g, " ")
    .replaceAll(/([a-z])([A-Z])/g, "$1 $2")
    .toLowerCase();
  return ACT_WORDS[action] ?? plain.charAt(0).toUpperCase() + plain.slice(1);
}

/**
 * The facts of an act, one after the other.
 * @example factsInWords({ role: "coach", athletesFreed: 2 }) // "role: coach; athletes freed: 2"
 */
export function factsInWords(facts: Readonly<Record<string, string | number | boolean | null>>): string {
  return Object.entries(facts)
    .filter(([, value]) => value !== null && value !== "")
    .map(([name, value]) => `${name.replaceAll(/([a-z])([A-Z])/g, "$1 $2").toLowerCase()}: ${wordOf(value)}`)
    .join("; ");
}

function wordOf(value: string | number | boolean | null): string {
  if (typeof value === "boolean") return value ? "yes" : "no";
  return String(value);
}
