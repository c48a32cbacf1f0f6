import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { monthRows } from "@/server/domain/ledger/month";
import type { MonthRecords } from "@/server/domain/ledger/month-records";
import { MONTH_COLUMNS, monthCsv, spreadsheetSafe } from "@/server/exports/month-csv";
import { charged, chargedReview, lesson, november, review } from "../domain/ledger/november";
import reference from "../reference/calendar.json";

const csvOf = (records: MonthRecords) => monthCsv({ ...monthRows(records), currency: records.currency });

/** Reads the bytes as an independent parser does: strict quotes, CRLF and nothing else, every row as long as the first. */
function readBack(csv: string): string[][] {
  return parse(Buffer.from(csv, "utf8"), {
    record_delimiter: "\r\n",
    relax_quotes: false,
    relax_column_count: false,
  });
}

function oneLesson(name: string): MonthRecords {
  const athletes = [
    { id: "athlete-1", name, log: { attendance: "came" as const, minutes: 60, pitches: 30 } },
  ];
  return november({
    sessions: [lesson("s1", "2026-11-03T22:00Z", { athletes })],
    charges: [charged("c1", "s1", "2026-11-03")],
  });
}

describe("the month as a file", () => {
  it("has a header, a row for each session and review, and a last row with the total, byte for byte", () => {
    const records = november({
      sessions: [lesson("s1", "2026-11-03T22:00Z")],
      reviews: [review("v1", "2026-11-05T01:30Z")],
      charges: [charged("c1", "s1", "2026-11-03"), chargedReview("c2", "v1", "2026-11-04")],
    });
    expect(csvOf(records)).toBe(
      [
        "Date,Start,Site,Kind,Athlete,Coach,Minutes,Pitches,Rate,Amount,Currency,State,Reference",
        "2026-11-03,17:00,North site,Lesson,Tamsin Vale,Wren Alder,60,30,65.50,65.50,USD,logged,s1",
        "2026-11-04,20:30,North site,Review,Tamsin Vale,Ilo Marsh,,,15.05,15.05,USD,sent,round-of-v1",
        "Total,,,,,,60,30,,80.55,USD,,",
        "",
      ].join("\r\n"),
    );
  });

  it("leaves an amount that was taken back a number, minus sign and all", () => {
    const charges = [charged("c2", "s1", "2026-11-02", { amountCents: -6550, reversesId: "c1" })];
    const rows = readBack(csvOf(november({ sessions: [lesson("s1", "2026-10-06T21:00Z")], charges })));
    expect(rows.map((row) => row[MONTH_COLUMNS.indexOf("Amount")])).toEqual(["Amount", "-65.50", "-65.50"]);
  });

  it("has a header and a total of nothing for a month of nothing", () => {
    expect(readBack(csvOf(november({ currency: "JPY" })))).toEqual([
      [...MONTH_COLUMNS],
      ["Total", "", "", "", "", "", "0", "0", "", "0", "JPY", "", ""],
    ]);
  });

  it("has a total for each currency", () => {
    const records = november({
      sessions: [lesson("s1", "2026-11-03T22:00Z"), lesson("s2", "2026-11-04T22:00Z")],
      charges: [charged("c1", "s1", "2026-11-03"), charged("c2", "s2", "2026-11-04", { currency: "EUR" })],
    });
    const totals = readBack(csvOf(records)).filter(([first]) => first === "Total");
    expect(totals.map((row) => [row[9], row[10]])).toEqual([
      ["65.50", "EUR"],
      ["65.50", "USD"],
    ]);
  });

  it("has rows that add up to the total to the cent, as a bookkeeper would add them", () => {
    fc.assert(
      fc.property(fc.array(fc.nat({ max: 9_999_999 }), { minLength: 1, maxLength: 60 }), (prices) => {
        const sessions = prices.map((_, index) => lesson(`s${index}`, "2026-11-03T22:00Z"));
        const charges = prices.map((price, index) =>
          charged(`c${index}`, `s${index}`, "2026-11-03", { amountCents: price, rateCents: price }),
        );
        const rows = readBack(csvOf(november({ sessions, charges }))).slice(1);
        const cents = rows.map((row) => BigInt((row[9] ?? "").replace(".", "")));
        expect(rows).toHaveLength(prices.length + 1);
        expect(cents.slice(0, -1).reduce((sum, one) => sum + one, 0n)).toBe(cents.at(-1));
      }),
      { numRuns: 50 },
    );
  });
});

describe("names in the file", () => {
  // RFC 4180 section 2, rules 5 to 7; the apostrophe by OWASP and ASVS 5.0 1.2.10: see the reference file.
  it.each(reference.csvCells.cases)("writes $field as $csv", ({ field, csv }) => {
    expect(csvOf(oneLesson(field))).toContain(`,Lesson,${csv},Wren Alder,`);
  });

  it.each([
    ["=cmd|' /C calc'!A0"],
    ["+1"],
    ["-2+3"],
    ["@SUM(A1)"],
    ["\t=1"],
    ["\r=1"],
    ["\n=1"],
    ["\u0000=1"],
    ["  =1+1"],
    ["\u00a0=1+1"],
    ["\u00a0 \u2003-1"],
    ["\u200b=1"],
    ["\ufeff=1"],
    [" \tx"],
    ["＝1"],
    ["＋1"],
    ["－1"],
    ["＠x"],
  ])("puts an apostrophe before %j", (name) => {
    expect(spreadsheetSafe(name)).toBe(`'${name}`);
    expect(readBack(csvOf(oneLesson(name)))[1]?.[4]).toBe(`'${name}`);
  });

  it.each([
    ["Zoë Ngô-Díaz"],
    ["O'Neil"],
    ["Ann = Bea"],
    ["J.-P."],
    ["  Ann"],
    ["李小龍"],
    ["🙂"],
    ["1-2"],
    [""],
  ])("leaves %j as it is", (name) => {
    expect(spreadsheetSafe(name)).toBe(name);
    expect(readBack(csvOf(oneLesson(name)))[1]?.[4]).toBe(name);
  });

  it("come back whole from any text, in a row of the right length, and never as a formula", () => {
    const anyText = fc.oneof(
      fc.string({ unit: "grapheme" }),
      fc.string({
        unit: fc.constantFrom(
          '"',
          ",",
          ";",
          "\r",
          "\n",
          "=",
          "-",
          "@",
          "'",
          " ",
          "\u00a0",
          "\t",
          "\u0000",
          "é",
        ),
      }),
    );
    fc.assert(
      fc.property(anyText, (name) => {
        const row = readBack(csvOf(oneLesson(name)))[1] ?? [];
        const cell = row[4] ?? "";
        expect(row).toHaveLength(MONTH_COLUMNS.length);
        expect([name, `'${name}`]).toContain(cell);
        expect(/^[=+\-@\t\r\n\0]/.test(cell.replace(/^[ \u00a0]+/, ""))).toBe(false);
      }),
      { numRuns: 500 },
    );
  });

  it.each(["two\nlines", "two\rlines", "two\r\nlines"])(
    "are quoted for any kind of line break: %j",
    (name) => {
      expect(csvOf(oneLesson(name))).toContain(`,"${name}",`);
    },
  );

  it("end every line with CRLF, and no line with a bare CR or LF outside quotes", () => {
    const csv = csvOf(oneLesson("plain"));
    expect(csv.endsWith("\r\n")).toBe(true);
    expect(csv.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  });
});
