import { type CurrencyCode, sumCents } from "@/server/domain/money/money";
import { type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";
import { timeInWords } from "@/server/domain/time/words";
import { type MonthDifference, monthDifferences } from "./month-differences";
import type { MonthCharge, MonthRecords, MonthReview, MonthRow, MonthSession } from "./month-records";
import { type MonthTotal, totalsBy } from "./month-totals";

/** The rows with their totals, beside the same sum taken from the charges alone. */
export interface MonthBooks {
  rows: MonthRow[];
  byKind: MonthTotal[];
  byCoach: MonthTotal[];
  grand: MonthTotal[];
  /** Of all charges of the month, by currency, without a look at any row. */
  fromCharges: { currency: CurrencyCode; amountCents: number }[];
  /** Whether both ways give the same and nothing is left to mend. */
  agree: boolean;
  differences: MonthDifference[];
}

/**
 * The month, one row for each session and athlete and for each review, earliest first. A session belongs to the month
 * of its start and a review to that of its sending, by the site's calendar; a charge to that of its day. A row's
 * amount is the sum of the month's charges for it, so a reversed charge comes to 0. A cancelled session, and one of
 * another month, has a row only when something of this month was charged or taken back for it; work of another month
 * counts no minutes or pitches here.
 */
export function monthRows(records: MonthRecords): MonthBooks {
  const isOfMonth = (day: CalendarDay) => day.startsWith(`${records.month}-`);
  const charges = records.charges.filter((charge) => isOfMonth(charge.chargedOn));
  const chargesOf = bySource(charges);
  const rows = [...records.sessions.flatMap(sessionRows), ...records.reviews.map(reviewRow)]
    .map((draft) => (isOfMonth(draft.day) ? draft : { ...draft, minutes: null, pitches: null }))
    .map((draft) => withCharges(draft, chargesOf.get(sourceKey(draft)) ?? [], records.currency))
    .filter((row) => row.chargeIds.length > 0 || (isOfMonth(row.day) && row.state !== "cancelled"))
    .sort(inOrder);
  const differences = monthDifferences(rows, charges);
  return {
    rows,
    byKind: totalsBy(rows, (row) => row.kind),
    byCoach: totalsBy(rows, (row) => row.coachId),
    grand: totalsBy(rows, () => "all"),
    fromCharges: chargesByCurrency(charges),
    agree: differences.length === 0,
    differences,
  };
}

type Draft = Omit<MonthRow, "rateCents" | "amountCents" | "currency" | "chargeIds"> & { sourceId: string };

function sessionRows(session: MonthSession): Draft[] {
  const { id, kind, zone, siteName, coachId, coachName, startsAtMs } = session;
  const day = dayOf(startsAtMs, zone);
  const startTime = timeInWords(startsAtMs, zone);
  return session.athletes.map(({ id: athleteId, name: athleteName, log }) => ({
    ...{ day, startTime, siteName, kind, athleteId, athleteName, coachId, coachName, startsAtMs },
    minutes: log?.minutes ?? null,
    pitches: log?.pitches ?? null,
    state: log?.attendance === "no_show" ? "no_show" : session.state,
    referenceId: id,
    sourceId: id,
  }));
}

function reviewRow(review: MonthReview): Draft {
  const { id: sourceId, roundId: referenceId, zone, siteName, coachId, coachName, athlete } = review;
  const startsAtMs = review.sentAtMs;
  return {
    day: dayOf(startsAtMs, zone),
    startTime: timeInWords(startsAtMs, zone),
    ...{ siteName, kind: "review", athleteId: athlete.id, athleteName: athlete.name, coachId, coachName },
    ...{ minutes: null, pitches: null, state: "sent", referenceId, sourceId, startsAtMs },
  };
}

/** A charge in another currency than the first of its row is left without one: it shows up as a difference. */
function withCharges(draft: Draft, charges: readonly MonthCharge[], academyCurrency: CurrencyCode): MonthRow {
  const { sourceId: _, ...row } = draft;
  const currency = charges[0]?.currency ?? academyCurrency;
  const counted = charges.filter((charge) => charge.currency === currency);
  return {
    ...row,
    rateCents: counted.find((charge) => charge.reversesId === null)?.rateCents ?? null,
    amountCents: sumCents(counted.map((charge) => charge.amountCents)),
    currency,
    chargeIds: counted.map((charge) => charge.id),
  };
}

function bySource(charges: readonly MonthCharge[]): Map<string, MonthCharge[]> {
  const groups = new Map<string, MonthCharge[]>();
  for (const charge of charges) {
    const { source, athleteId } = charge;
    const sourceId = source.kind === "session" ? source.sessionId : source.reviewId;
    const key = sourceKey({ kind: source.kind, sourceId, athleteId });
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [charge]);
    else group.push(charge);
  }
  return groups;
}

function sourceKey(of: { kind: string; sourceId: string; athleteId: string }): string {
  return JSON.stringify([of.kind === "review" ? "review" : "session", of.sourceId, of.athleteId]);
}

function chargesByCurrency(charges: readonly MonthCharge[]): MonthBooks["fromCharges"] {
  const currencies = [...new Set(charges.map((charge) => charge.currency))].sort();
  return currencies.map((currency) => ({
    currency,
    amountCents: sumCents(charges.filter((one) => one.currency === currency).map((one) => one.amountCents)),
  }));
}

function inOrder(a: MonthRow, b: MonthRow): number {
  if (a.startsAtMs !== b.startsAtMs) return a.startsAtMs - b.startsAtMs;
  if (a.referenceId !== b.referenceId) return a.referenceId < b.referenceId ? -1 : 1;
  return a.athleteId < b.athleteId ? -1 : 1;
}
