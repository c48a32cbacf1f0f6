import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { monthRows } from "@/server/domain/ledger/month";
import { charged, chargedReview, lesson, november, review } from "./november";

const NOVEMBER = november({
  sessions: [
    lesson("s1", "2026-11-03T22:00Z"),
    lesson("s2", "2026-11-10T22:00Z", {
      kind: "group",
      athletes: [
        { id: "athlete-2", name: "Joss Reed", log: { attendance: "came", minutes: 90, pitches: 20 } },
        { id: "athlete-3", name: "Pia Holm", log: { attendance: "no_show", minutes: 0, pitches: 0 } },
      ],
    }),
  ],
  reviews: [review("v1", "2026-11-05T01:30Z")],
  charges: [
    charged("c1", "s1", "2026-11-03"),
    charged("c2", "s2", "2026-11-10", {
      kind: "group",
      athleteId: "athlete-2",
      rateCents: 3010,
      amountCents: 3010,
    }),
    chargedReview("c3", "v1", "2026-11-04"),
  ],
});

describe("the rows of a month", () => {
  it("are one for each session and athlete and for each review, earliest first, by the clock of the site", () => {
    const { rows } = monthRows(NOVEMBER);
    expect(
      rows.map((row) => [row.day, row.startTime, row.kind, row.athleteName, row.state, row.amountCents]),
    ).toEqual([
      ["2026-11-03", "17:00", "lesson", "Tamsin Vale", "logged", 6550],
      ["2026-11-04", "20:30", "review", "Tamsin Vale", "sent", 1505],
      ["2026-11-10", "17:00", "group", "Joss Reed", "logged", 3010],
      ["2026-11-10", "17:00", "group", "Pia Holm", "no_show", 0],
    ]);
    expect(rows[1]).toMatchObject({
      referenceId: "round-of-v1",
      minutes: null,
      pitches: null,
      rateCents: 1505,
    });
    expect(rows[3]).toMatchObject({ rateCents: null, chargeIds: [], currency: "USD" });
  });

  it("add up by kind, by coach and in all, and agree with the charges", () => {
    const books = monthRows(NOVEMBER);
    expect(books.grand).toEqual([
      { key: "all", currency: "USD", rowCount: 4, minutes: 150, pitches: 50, amountCents: 11065 },
    ]);
    expect(books.fromCharges).toEqual([{ currency: "USD", amountCents: 11065 }]);
    expect(books.byKind.map(({ key, amountCents }) => [key, amountCents])).toEqual([
      ["group", 3010],
      ["lesson", 6550],
      ["review", 1505],
    ]);
    expect(books.byCoach.map(({ key, amountCents }) => [key, amountCents])).toEqual([
      ["coach-1", 9560],
      ["coach-2", 1505],
    ]);
    expect([books.agree, books.differences]).toEqual([true, []]);
  });

  it("take a session by the site's day: late on 31 October is not November, late on 30 November is", () => {
    const sessions = [
      lesson("s1", "2026-11-01T03:59Z"),
      lesson("s2", "2026-11-01T04:00Z"),
      lesson("s3", "2026-12-01T04:59Z"),
      lesson("s4", "2026-12-01T05:00Z"),
    ];
    const { rows } = monthRows(november({ sessions }));
    expect(rows.map(({ referenceId, day }) => [referenceId, day])).toEqual([
      ["s2", "2026-11-01"],
      ["s3", "2026-11-30"],
    ]);
  });

  it("leave out a cancelled session, and show one that is not logged yet with nothing charged", () => {
    const athletes = [{ id: "athlete-1", name: "Tamsin Vale", log: null }];
    const sessions = [
      lesson("s1", "2026-11-03T22:00Z", { state: "cancelled", athletes }),
      lesson("s2", "2026-11-04T22:00Z", { state: "booked", athletes }),
    ];
    const books = monthRows(november({ sessions }));
    expect(books.rows).toHaveLength(1);
    expect(books.rows[0]).toMatchObject({ state: "booked", amountCents: 0, minutes: null, pitches: null });
    expect(books.agree).toBe(true);
  });

  it("are none for a month of nothing, which agrees", () => {
    expect(monthRows(november({}))).toMatchObject({ rows: [], grand: [], fromCharges: [], agree: true });
  });
});

describe("a charge that was taken back", () => {
  const back = { amountCents: -6550, reversesId: "c1" };

  it("in its own month leaves the row at nothing", () => {
    const charges = [charged("c1", "s1", "2026-11-03"), charged("c2", "s1", "2026-11-03", back)];
    const books = monthRows(november({ sessions: [lesson("s1", "2026-11-03T22:00Z")], charges }));
    expect(books.rows[0]).toMatchObject({ amountCents: 0, rateCents: 6550, chargeIds: ["c1", "c2"] });
    expect(books.agree).toBe(true);
  });

  it("in a later month is a row of that month, without minutes and pitches, under the day it was held", () => {
    const sessions = [lesson("s1", "2026-10-06T21:00Z")];
    const charges = [charged("c1", "s1", "2026-10-06"), charged("c2", "s1", "2026-11-02", back)];
    const books = monthRows(november({ sessions, charges }));
    expect(books.rows[0]).toMatchObject({
      day: "2026-10-06",
      amountCents: -6550,
      minutes: null,
      pitches: null,
    });
    expect(books.grand[0]).toMatchObject({ amountCents: -6550, minutes: 0, pitches: 0 });
    expect(books.agree).toBe(true);
  });
});

describe("a month that does not agree", () => {
  const session = lesson("s1", "2026-11-03T22:00Z");
  const books = (records: Parameters<typeof november>[0]) => {
    const { agree, differences } = monthRows(november(records));
    expect(agree).toBe(differences.length === 0);
    return differences;
  };

  it("names a session that was logged and not charged, and a review that was not", () => {
    expect(books({ sessions: [session], reviews: [review("v1", "2026-11-05T01:30Z")] })).toEqual([
      { difference: "no_charge", referenceId: "s1", athleteId: "athlete-1" },
      { difference: "no_charge", referenceId: "round-of-v1", athleteId: "athlete-1" },
    ]);
  });

  it("names a charge of nothing that is there, and by how much the sums differ", () => {
    expect(books({ charges: [charged("c1", "nowhere", "2026-11-03")] })).toEqual([
      { difference: "charge_without_row", chargeId: "c1" },
      { difference: "totals_differ", currency: "USD", fromRowsCents: 0, fromChargesCents: 6550 },
    ]);
  });

  it("names a charge for a session that was not held", () => {
    const noShow = { ...session, state: "no_show" as const };
    expect(books({ sessions: [noShow], charges: [charged("c1", "s1", "2026-11-03")] })).toEqual([
      { difference: "charged_though_not_held", referenceId: "s1", athleteId: "athlete-1", amountCents: 6550 },
    ]);
  });

  it("names a charge that is a cent off its rate", () => {
    const charges = [charged("c1", "s1", "2026-11-03", { amountCents: 6549 })];
    expect(books({ sessions: [session], charges })).toEqual([
      { difference: "charge_differs_from_rate", chargeId: "c1", rateCents: 6550, amountCents: 6549 },
    ]);
  });

  it("names a charge in a second currency on one row", () => {
    const charges = [
      charged("c1", "s1", "2026-11-03"),
      charged("c2", "s1", "2026-11-03", { currency: "EUR" }),
    ];
    expect(books({ sessions: [session], charges })).toEqual([
      { difference: "charge_without_row", chargeId: "c2" },
      { difference: "totals_differ", currency: "EUR", fromRowsCents: 0, fromChargesCents: 6550 },
    ]);
  });

  it("does not take a review's charge for a session of the same id", () => {
    const differences = books({ sessions: [session], charges: [chargedReview("c1", "s1", "2026-11-03")] });
    expect(differences.map(({ difference }) => difference)).toEqual([
      "no_charge",
      "charge_without_row",
      "totals_differ",
    ]);
  });
});

describe("any month", () => {
  const cents = fc.integer({ min: 0, max: 5_000_000 });
  const anyMonth = fc.record({
    sessions: fc.array(
      fc.record({ dayOfMonth: fc.integer({ min: 1, max: 28 }), price: cents, coach: fc.nat({ max: 3 }) }),
      { maxLength: 40 },
    ),
    strays: fc.array(cents, { maxLength: 2 }),
  });

  it("has rows, kinds, coaches and charges that all add up to the same cent, unless a charge has no row", () => {
    fc.assert(
      fc.property(anyMonth, ({ sessions, strays }) => {
        const day = (dayOfMonth: number) => `2026-11-${String(dayOfMonth).padStart(2, "0")}`;
        const books = monthRows(
          november({
            sessions: sessions.map(({ dayOfMonth, coach }, index) =>
              lesson(`s${index}`, `${day(dayOfMonth)}T20:00Z`, {
                coachId: `coach-${coach}`,
                kind: index % 2 === 0 ? "lesson" : "bullpen",
              }),
            ),
            charges: [
              ...sessions.map(({ dayOfMonth, price }, index) =>
                charged(`c${index}`, `s${index}`, day(dayOfMonth), { amountCents: price, rateCents: price }),
              ),
              ...strays.map((price, index) =>
                charged(`x${index}`, "nowhere", day(5), { amountCents: price, rateCents: price }),
              ),
            ],
          }),
        );
        const ofSessions = sessions.reduce((sum, { price }) => sum + BigInt(price), 0n);
        const ofStrays = strays.reduce((sum, price) => sum + BigInt(price), 0n);
        const sum = (totals: readonly { amountCents: number }[]) =>
          totals.reduce((total, { amountCents }) => total + BigInt(amountCents), 0n);
        expect([books.rows, books.byKind, books.byCoach, books.grand].map(sum)).toEqual(
          Array(4).fill(ofSessions),
        );
        expect(sum(books.fromCharges)).toBe(ofSessions + ofStrays);
        expect(books.agree).toBe(strays.length === 0);
      }),
    );
  });
});
