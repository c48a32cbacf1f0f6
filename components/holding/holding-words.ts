import type { HoldingLedgerView } from "@/server/api/evidence/holding-shape";
import { FEWEST_CORRECTIONS, type HoldingTimes } from "@/server/domain/mechanics/holding-times";

/** A share to a whole percent. */
export const percentInWords = (share: number): string => `${Math.round(share * 100)} %`;

/** "1 day", "12 days". */
export const daysInWords = (days: number): string => (days === 1 ? "1 day" : `${days} days`);

/** The median for a table's cell. */
export function medianInWords({ watched, medianDays }: HoldingTimes): string {
  if (watched < FEWEST_CORRECTIONS) return "too few";
  return medianDays === null ? "not reached yet" : daysInWords(medianDays);
}

/** Its interval for a table's cell; a dash where there is no median. */
export function intervalInWords({ medianDays, lowerDays, upperDays }: HoldingTimes): string {
  if (medianDays === null) return "–";
  return upperDays === null ? `${lowerDays ?? 0} or more` : `${lowerDays ?? 0} to ${upperDays}`;
}

/** How many never held and are not worked on any more. */
export const retiredOf = ({ watched, held, open }: HoldingTimes): number => watched - held - open;

/**
 * The ledger's first sentences: how long it takes, and how many that rests on.
 * @example one correction that is open: "Too few corrections (1 of at least 5). 0 held, 1 is open, 0 were retired."
 */
export function ledgerInWords(all: HoldingTimes): string[] {
  const how = `${(all.words.split(";")[0] ?? "").replace(/^./, (first) => first.toUpperCase())}.`;
  const counts = `${all.held} held, ${were(all.open, "is", "are")} open, ${were(retiredOf(all), "was", "were")} retired before it held.`;
  const back = `Of those that held, ${all.cameBack === 0 ? "none" : all.cameBack} came back.`;
  return [how, counts, ...(all.held === 0 ? [] : [back])];
}

/** The curve read out at a few days, or why there is none. */
export function curveInWords({
  all,
  steps,
  readings,
  longestDays,
}: Pick<HoldingLedgerView, "all" | "steps" | "readings" | "longestDays">): string {
  if (all.watched < FEWEST_CORRECTIONS) {
    return `A curve is drawn from ${FEWEST_CORRECTIONS} corrections on.`;
  }
  if (steps.length === 0) {
    return `None has held so far, so there is no curve yet. The longest was watched for ${daysInWords(longestDays)}.`;
  }
  if (readings.length === 0) return `The longest was watched for ${daysInWords(longestDays)}.`;
  const read = readings.map(({ days, share }) => `${percentInWords(share)} within ${daysInWords(days)}`);
  return `Held: ${read.join(", ")}.`;
}

const were = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;
