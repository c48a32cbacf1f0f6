import { describe, expect, it } from "vitest";
import { monthRows } from "@/server/domain/ledger/month";
import { monthByRates } from "@/server/domain/ledger/month-by-rates";
import type { MonthRecords } from "@/server/domain/ledger/month-records";
import type { Rate } from "@/server/domain/ledger/rates";
import { toMend } from "@/server/domain/ledger/to-mend";
import { at, charged, chargedReview, lesson, november, review } from "./november";

const HOUR_MS = 3_600_000;
const price = (id: string, kind: Rate["kind"], priceCents: number, over: Partial<Rate> = {}): Rate => ({
  ...{ id, kind, priceCents, currency: "USD", effectiveFrom: "2026-01-01", effectiveTo: null },
  ...over,
});
const RATES = [price("rate-1", "lesson", 6550), price("rate-2", "review", 1505)];

function byRates(records: Partial<MonthRecords>, rates = RATES) {
  const month = november(records);
  return monthByRates({ ...month, rows: monthRows(month).rows }, rates);
}

describe("a month by the rates alone", () => {
  const held = lesson("s1", "2026-11-10T22:00Z");
  const cases: [string, Partial<MonthRecords>, number | null][] = [
    ["nothing held", {}, null],
    [
      "a lesson and a review",
      {
        sessions: [held],
        reviews: [review("r1", "2026-11-12T22:00Z")],
        charges: [charged("c1", "s1", "2026-11-10"), chargedReview("c2", "r1", "2026-11-12")],
      },
      8055,
    ],
    ["a lesson nobody charged still counts", { sessions: [held] }, 6550],
    ["one that is only booked counts nothing", { sessions: [{ ...held, state: "booked" }] }, null],
    [
      "one taken back in the month comes to nothing",
      {
        sessions: [held],
        charges: [
          charged("c1", "s1", "2026-11-10"),
          charged("c2", "s1", "2026-11-20", { amountCents: -6550, reversesId: "c1" }),
        ],
      },
      0,
    ],
    [
      "one of October taken back in November counts the other way",
      {
        sessions: [lesson("s0", "2026-10-20T22:00Z")],
        charges: [charged("c2", "s0", "2026-11-03", { amountCents: -6550, reversesId: "c0" })],
      },
      -6550,
    ],
  ];
  for (const [name, records, amountCents] of cases) {
    it(name, () => {
      expect(byRates(records)).toEqual(amountCents === null ? [] : [{ currency: "USD", amountCents }]);
    });
  }

  it("takes the price of each day across a change", () => {
    const rates = [
      price("old", "lesson", 6000, { effectiveTo: "2026-11-15" }),
      price("new", "lesson", 7000, { effectiveFrom: "2026-11-15" }),
    ];
    const sessions = [lesson("s1", "2026-11-14T22:00Z"), lesson("s2", "2026-11-15T22:00Z")];
    expect(byRates({ sessions }, rates)).toEqual([{ currency: "USD", amountCents: 13_000 }]);
  });
});

describe("what is to mend in a month", () => {
  const dated = (session: ReturnType<typeof lesson>) => ({
    ...session,
    endsAtMs: session.startsAtMs + HOUR_MS,
  });
  const booked = dated(lesson("s1", "2026-11-10T22:00Z", { state: "booked" }));

  function mends(sessions: (typeof booked)[], rates = RATES, nowMs = at("2026-11-10T23:00Z")) {
    const records = november({ sessions });
    return toMend({ ...records, sessions }, monthRows(records).differences, rates, nowMs);
  }

  it("is nothing while a session goes on, and names it from its end", () => {
    expect(mends([booked], RATES, at("2026-11-10T22:59:59Z"))).toEqual([]);
    expect(mends([booked])).toMatchObject([{ mend: "not_logged", sessionId: "s1", names: ["Tamsin Vale"] }]);
  });

  it("leaves out what belongs to another month by the site's calendar", () => {
    expect(mends([dated(lesson("s0", "2026-11-01T03:00Z", { state: "booked" }))])).toEqual([]);
  });

  it("tells a kind without a price once, from its first such day, with how many sessions", () => {
    const later = dated(lesson("s2", "2026-11-20T22:00Z", { state: "booked" }));
    const rates = [price("rate-1", "lesson", 6550, { effectiveTo: "2026-11-11" })];
    expect(
      mends([later, booked, dated(lesson("s3", "2026-11-25T22:00Z", { state: "booked" }))], rates, 0),
    ).toEqual([{ mend: "no_rate", kind: "lesson", day: "2026-11-20", sessions: 2 }]);
  });

  it("passes on what keeps rows and charges apart", () => {
    expect(mends([dated(lesson("s1", "2026-11-10T22:00Z"))])).toEqual([
      {
        mend: "difference",
        difference: { difference: "no_charge", referenceId: "s1", athleteId: "athlete-1" },
      },
    ]);
  });
});
