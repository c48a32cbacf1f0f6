import type {
  MonthCharge,
  MonthRecords,
  MonthReview,
  MonthSession,
} from "@/server/domain/ledger/month-records";

export const at = (utc: string) => Date.parse(utc);

/** A lesson with one athlete at the north site (New York), logged with 30 pitches in 60 minutes. */
export function lesson(id: string, startUtc: string, over: Partial<MonthSession> = {}): MonthSession {
  return {
    id,
    kind: "lesson",
    state: "logged",
    startsAtMs: at(startUtc),
    zone: "America/New_York",
    siteName: "North site",
    coachId: "coach-1",
    coachName: "Wren Alder",
    athletes: [
      { id: "athlete-1", name: "Tamsin Vale", log: { attendance: "came", minutes: 60, pitches: 30 } },
    ],
    ...over,
  };
}

/** A review sent to the same athlete by another coach. */
export function review(id: string, sentUtc: string, over: Partial<MonthReview> = {}): MonthReview {
  return {
    id,
    roundId: `round-of-${id}`,
    sentAtMs: at(sentUtc),
    zone: "America/New_York",
    siteName: "North site",
    coachId: "coach-2",
    coachName: "Ilo Marsh",
    athlete: { id: "athlete-1", name: "Tamsin Vale" },
    ...over,
  };
}

/** The charge of a session for its athlete, at the price of its rate. */
export function charged(
  id: string,
  sessionId: string,
  chargedOn: string,
  over: Partial<MonthCharge> = {},
): MonthCharge {
  return {
    id,
    athleteId: "athlete-1",
    kind: "lesson",
    chargedOn,
    rateId: "rate-1",
    rateCents: 6550,
    amountCents: 6550,
    currency: "USD",
    source: { kind: "session", sessionId },
    reversesId: null,
    ...over,
  };
}

/** The charge of a review. */
export function chargedReview(id: string, reviewId: string, chargedOn: string): MonthCharge {
  const source = { kind: "review" as const, reviewId };
  return charged(id, "", chargedOn, { kind: "review", source, rateCents: 1505, amountCents: 1505 });
}

/** November 2026 in US dollars with what is given. */
export function november(records: Partial<MonthRecords>): MonthRecords {
  return { month: "2026-11", currency: "USD", sessions: [], reviews: [], charges: [], ...records };
}
