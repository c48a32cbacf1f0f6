import { formatMoney } from "@/server/domain/money/money";
import { isCalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";

type Fact = string | number | boolean | null;

/** Acts whose name does not read as words by itself. */
const ACT_WORDS: Record<string, string> = {
  "academy.started": "Academy started",
  "academy.settings": "Settings saved",
  "academy.reading": "Reading of the rule books set",
  "rule_book.put_aside": "Rule book put aside",
  "rule_book.offered": "Rule book offered again",
  "limit.overridden": "Limit overridden",
  "limit.override_taken_back": "Override of a limit taken back",
  "account.invitation": "Invitation used",
  "account.reset": "Password reset",
  "account.invited": "Invited",
  "site.hours": "Opening hours set",
  "coach.hours": "Coach’s hours set",
  "coach.away": "Absence written down",
  "coach.back": "Absence taken back",
  "guardians.granted": "Guardians’ view decided",
  "checkpoint.put_aside": "Checkpoint put aside",
  "template.added": "Usual review added",
  "template.edited": "Usual review changed",
  "template.put_aside": "Usual review put aside",
  "template.offered": "Usual review offered again",
  "rate.set": "Price set",
  "rate.removed": "Price taken out",
  "notices.retried": "Notices put back in line",
  "agreement.drawn": "Blind set drawn",
  "agreement.closed": "Blind set closed",
  "remeasure.withdrawn": "Request for a second measure withdrawn",
  "report.link_made": "Link to a season’s report made",
  "report.link_revoked": "Link to a season’s report ended",
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
export function factsInWords(facts: Readonly<Record<string, Fact>>): string {
  return Object.entries(facts)
    .filter(([name, value]) => value !== null && value !== "" && name !== "currency")
    .map(([name, value]) => `${factName(name)}: ${factValue(name, value, facts.currency)}`)
    .join("; ");
}

function factName(name: string): string {
  return name
    .replace(/(Person)?Id$|Cents$/, "")
    .replaceAll(/([a-z])([A-Z])/g, "$1 $2")
    .toLowerCase();
}

function factValue(name: string, value: Fact, currency: Fact | undefined): string {
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value === "number" && name.endsWith("Cents") && typeof currency === "string") {
    return formatMoney(value, currency);
  }
  const text = String(value);
  return isCalendarDay(text)
    ? dayInWords(text, { withYear: true })
    : /^[a-z]{3}_\w{20}$/.test(text)
      ? text
      : text.replaceAll("_", " ");
}
