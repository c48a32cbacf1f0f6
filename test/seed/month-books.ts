import type { AcademyRows } from "@/server/data/academy-rows";
import { type MonthBooks, monthRows } from "@/server/domain/ledger/month";
import type { MonthCharge, MonthReview, MonthSession } from "@/server/domain/ledger/month-records";

const ZONE = "America/New_York";

/** The months in which something was charged, earliest first. */
export function monthsOf(rows: AcademyRows): string[] {
  return [...new Set(rows.charge.map(({ chargedOn }) => chargedOn.slice(0, 7)))].sort();
}

/** A month's books, made from the seed's rows as the records are made from the database. */
export function booksOf(rows: AcademyRows, month: string): MonthBooks {
  const monthMs = Date.parse(`${month}-15`);
  const isNear = (instantMs: number) => Math.abs(instantMs - monthMs) < NEAR_MS;
  return monthRows({
    ...{ month, currency: "USD" },
    sessions: rows.session.filter((row) => isNear(row.startsAtMs)).map((session) => sessionOf(rows, session)),
    reviews: rows.review.filter(({ kind, sentAtMs }) => kind === "review" && isNear(sentAtMs)).map(reviewOf),
    charges: rows.charge.map((charge) => chargeOf(rows, charge)),
  });
}

/* Three weeks to either side of a month's middle hold all of it, with days to spare. */
const NEAR_MS = 21 * 86_400_000;

function sessionOf(rows: AcademyRows, session: AcademyRows["session"][number]): MonthSession {
  const { id, kind, state, startsAtMs, siteId, coachPersonId } = session;
  const athletes = rows.sessionAthlete
    .filter(({ sessionId }) => sessionId === id)
    .map(({ athleteId }) => {
      const log = rows.sessionLog.find((row) => row.sessionId === id && row.athleteId === athleteId) ?? null;
      return { id: athleteId, name: athleteId, log };
    });
  const place = { zone: ZONE, siteName: siteId, coachId: coachPersonId, coachName: coachPersonId };
  return { id, kind, state, startsAtMs, athletes, ...place };
}

function reviewOf(review: AcademyRows["review"][number]): MonthReview {
  const { id, roundId, sentAtMs, coachPersonId, athleteId } = review;
  const place = { zone: ZONE, siteName: "site", coachId: coachPersonId, coachName: coachPersonId };
  return { id, roundId, sentAtMs, ...place, athlete: { id: athleteId, name: athleteId } };
}

function chargeOf(rows: AcademyRows, charge: AcademyRows["charge"][number]): MonthCharge {
  const { id, athleteId, kind, chargedOn, rateId, amountCents, currency, sessionId, reviewId } = charge;
  const rateCents = rows.rate.find((rate) => rate.id === rateId)?.priceCents ?? -1;
  const base = { id, athleteId, kind, chargedOn, rateId, amountCents, currency, rateCents, reversesId: null };
  if (sessionId) return { ...base, source: { kind: "session", sessionId } };
  return { ...base, source: { kind: "review", reviewId: reviewId ?? "" } };
}
