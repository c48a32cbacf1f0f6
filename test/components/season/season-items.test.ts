import { describe, expect, it } from "vitest";
import { type SeasonAnswer, seasonLinks } from "@/components/season/season-answer";
import { rowsOfPhase, seasonDrawing } from "@/components/season/season-items";
import { UNCOUNTED } from "@/server/domain/calendar/counted-pitches";

const EMPTY: SeasonAnswer = {
  athlete: {
    athleteId: "ath_1",
    givenName: "Kit",
    name: "Kit Marsh",
    ageYears: 12,
    throws: "right",
    siteName: "North site",
    coachName: null,
  },
  today: "2026-11-25",
  sinceDay: "2025-11-25",
  maxOpenCorrections: 5,
  hasConsent: true,
  arm: { words: "", why: [], marks: [] },
  pain: { stop: null, mayClear: false, clearedBy: "guardian", reports: [], clearances: [] },
  rounds: [],
  corrections: [],
  judged: [],
  sessions: [],
  games: [],
  outings: [],
  weeks: [],
  changes: { words: [], all: [] },
};

const draw = (season: Partial<SeasonAnswer>) =>
  seasonDrawing({ ...EMPTY, ...season }, seasonLinks("family", "ath_1"));

const correction = (id: string, checkpointId: string, state: "given" | "held") => ({
  id,
  ...{ roundId: "rnd_1", clipId: "clp_1", frame: 108 },
  checkpointId,
  checkpointName: checkpointId,
  phase: "stride" as const,
  cue: "",
  state,
  cameBack: false,
  givenOn: "2026-10-01",
  spans:
    state === "given"
      ? [{ state, fromDay: "2026-10-01", toDay: null }]
      : [
          { state: "given" as const, fromDay: "2026-10-01", toDay: "2026-10-20" },
          { state, fromDay: "2026-10-20", toDay: null },
        ],
});

describe("the drawing of a season", () => {
  it("holds this month when nothing was recorded", () => {
    expect(draw({}).axis).toEqual({ startDay: "2026-11-01", endDay: "2026-12-01" });
  });

  it("reaches from the first thing recorded to what is planned", () => {
    const { axis } = draw({
      games: [{ id: "g", thrownOn: "2026-09-12", kind: "game", pitches: 40 }],
      outings: [{ id: "o", plannedOn: "2027-01-03", pitches: 60 }],
    });
    expect(axis).toEqual({ startDay: "2026-09-01", endDay: "2027-02-01" });
  });

  it("gives every phase with corrections one row, as a delivery runs, and each correction one span", () => {
    const knee = { ...correction("a", "Front knee", "held"), phase: "arm_cocking" as const };
    const { rows, items } = draw({ corrections: [knee, correction("b", "Gaze", "given")] });
    expect(rows.map((row) => row.label)).toEqual([
      ...[
        "Throws a week",
        "Outings",
        "Rounds",
        "Corrections: stride",
        "Corrections: arm cocking",
        "Sessions",
      ],
    ]);
    expect(rowsOfPhase(rows, "stride").map(({ key }) => key)).toEqual([
      ...["throws", "outings", "rounds", "stride", "sessions"],
    ]);
    expect(items).toMatchObject([
      { state: "held", endDay: "2026-10-20", caps: [{ day: "2026-10-20", look: "square" }] },
      { state: "still open", endDay: null, caps: [] },
    ]);
  });

  it("draws what came back as one span: a square where it held, a thin line, a diamond where it came back", () => {
    const back = {
      ...correction("a", "Front knee", "held"),
      state: "given" as const,
      cameBack: true,
      spans: [
        { state: "given" as const, fromDay: "2026-09-01", toDay: "2026-09-20" },
        { state: "held" as const, fromDay: "2026-09-20", toDay: "2026-10-20" },
        { state: "given" as const, fromDay: "2026-10-20", toDay: null },
      ],
    };
    expect(draw({ corrections: [back] }).items).toMatchObject([
      {
        state: "came back, still open",
        endDay: null,
        parts: [{ look: "open" }, { look: "thin" }, { look: "open" }],
        caps: [{ look: "square" }, { day: "2026-10-20", look: "diamond" }],
      },
    ]);
  });

  it("draws one without any span not at all", () => {
    expect(draw({ corrections: [{ ...correction("a", "x", "held"), spans: [] }] }).items).toEqual([]);
  });

  it("draws a round that began and ended on one day as that day", () => {
    const { items } = draw({
      rounds: [{ id: "r", state: "withdrawn", receivedOn: "2026-11-02", endedOn: "2026-11-02" }],
    });
    expect(items[0]).toMatchObject({ startDay: "2026-11-02", endDay: "2026-11-03", look: "open" });
  });

  it("leads families and staff to screens of their own", () => {
    expect(seasonLinks("family", "ath_1").round("rnd_1")).toBe("/family/ath_1/rounds/rnd_1");
    expect(seasonLinks("staff", "ath_1").round("rnd_1")).toBe("/reviews/rnd_1");
    const given = { roundId: "rnd_1", clipId: "clp_1", frame: 108, checkpointId: "cpt_1" };
    const family = seasonLinks("family", "ath_1");
    expect([family.correction(given), family.evidence(given)]).toEqual(
      Array(2).fill("/family/ath_1/rounds/rnd_1"),
    );
    const staff = seasonLinks("staff", "ath_1");
    expect(staff.correction(given)).toBe("/reviews/rnd_1?clip=clp_1&frame=109");
    expect(staff.correction({ ...given, clipId: null, frame: null })).toBe("/reviews/rnd_1");
    expect(staff.evidence(given)).toBe("/athletes/ath_1/checkpoints/cpt_1");
  });

  it("has a row for pain only where pain was reported", () => {
    const reports = [
      { id: "p", kind: "pain" as const, feltOn: "2026-11-03", reportedAtMs: 0, note: "", byName: "" },
    ];
    const { rows, items } = draw({ pain: { ...EMPTY.pain, reports } });
    expect(rows.map((row) => row.key)).toContain("pain");
    expect(items[0]).toMatchObject({ row: "pain", look: "crossed" });
  });

  it("says of a session how hard it was where that was asked, and who did not come", () => {
    const session = { kind: "bullpen" as const, heldOn: "2026-11-10", coachName: "", ...UNCOUNTED };
    const held = { ...session, state: "logged" as const, attendance: "came" as const };
    const { items } = draw({
      sessions: [
        { ...held, id: "hard", effort: 7, strikes: 14, topSpeed: 71.5, speedUnit: "mph" },
        { ...held, id: "unasked", effort: null },
        { ...held, id: "away", attendance: "no_show", effort: null },
        { ...session, id: "ahead", state: "booked", attendance: null, effort: null },
      ],
    });
    expect(items.map((item) => item.state)).toEqual([
      "effort 7 of 10, 14 strikes, fastest 71.5 mph",
      "",
      "did not come",
      "booked",
    ]);
  });
});
