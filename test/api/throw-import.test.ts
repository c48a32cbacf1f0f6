import { describe, expect, it } from "vitest";
import { throwEntry } from "@/db/schema/throwing";
import { IMPORT_TEMPLATE, MOST_IMPORT_ROWS, readThrowsFile } from "@/server/imports/throws-file";
import { makeAcademy, WHO } from "../helpers/academy";
import { refused } from "../helpers/refuses";
import { bookBullpen, told } from "../helpers/throwing-desk";

const CHILD = WHO.child.athleteId;
const HEAD = "Day,Kind,Pitches,Innings pitched,Against,Note\r\n";
const GOOD = `${HEAD}2026-04-18,Game,45,2 1/3,Lakeside,\r\n4/25/2026,Bullpen,30,,,"easy, flat"\r\n`;
const MIXED = `${GOOD}2026-05-02,Cricket,many,,,\r\n2026-11-26,Game,20,,,\r\n`;
const fileOf = (csv: string) => ({ athleteId: CHILD, csv, dayOrder: "month_first" }) as const;

describe("a file of past throwing", () => {
  it("is shown before anything is written: what is new, and each wrong line with all that is wrong", async () => {
    const academy = await makeAcademy();
    const coach = await academy.as(WHO.coach);
    const before = academy.snapshot();
    const preview = await coach.throwImport.preview(fileOf(MIXED));
    expect(academy.snapshot()).toBe(before);
    expect(preview).toEqual({
      fresh: [
        { line: 2, thrownOn: "2026-04-18", kind: "game", pitches: 45 },
        { line: 3, thrownOn: "2026-04-25", kind: "bullpen", pitches: 30 },
      ],
      there: [],
      bad: [
        {
          line: 4,
          problems: [expect.stringContaining('Kind "Cricket"'), 'Pitches "many" is not a whole number.'],
        },
        { line: 5, problems: ["The day has not come yet: the log holds what was thrown."] },
      ],
      unknownColumns: [],
    });
  });

  it("with wrong lines goes in only when it is asked to leave them out", async () => {
    const academy = await makeAcademy();
    const coach = await academy.as(WHO.coach);
    await refused(academy, () => coach.throwImport.add({ ...fileOf(MIXED), withoutBad: false }), {
      message: "These lines are wrong: 4, 5. Nothing was logged.",
    });
    const counts = await coach.throwImport.add({ ...fileOf(MIXED), withoutBad: true });
    expect(counts).toEqual({ added: 2, there: 0, leftOut: 2 });
    const { log } = await coach.throwing.view({ athleteId: CHILD });
    expect(log).toMatchObject([
      { thrownOn: "2026-04-25", kind: "bullpen", pitches: 30, note: "easy, flat" },
      { thrownOn: "2026-04-18", kind: "game", pitches: 45, outs: 7, opponent: "Lakeside" },
    ]);
  });

  it("adds nothing the second time, and nothing again of a row that was corrected since", async () => {
    const academy = await makeAcademy();
    const coach = await academy.as(WHO.coach);
    await coach.throwImport.add({ ...fileOf(GOOD), withoutBad: false });
    const [row] = await academy.db.select().from(throwEntry);
    const change = { thrownOn: row?.thrownOn ?? "", kind: "game", pitches: 12 } as const;
    await coach.throwing.correct({ entryId: row?.id ?? "", ...change });
    const before = academy.snapshot();
    const counts = await coach.throwImport.add({ ...fileOf(GOOD), withoutBad: false });
    expect(counts).toEqual({ added: 0, there: 2, leftOut: 0 });
    expect(academy.snapshot()).toBe(before);
  });

  it("does not count again what the family logged", async () => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    await guardian.throwing.log({ athleteId: CHILD, thrownOn: "2026-04-18", kind: "game", pitches: 45 });
    const coach = await academy.as(WHO.coach);
    expect(await coach.throwImport.preview(fileOf(GOOD))).toMatchObject({
      fresh: [{ line: 3 }],
      there: [{ line: 2 }],
    });
  });

  it("flags the booking it leaves no room for", async () => {
    const academy = await makeAcademy();
    await bookBullpen(academy, "2026-11-26");
    const coach = await academy.as(WHO.coach);
    const csv = `${HEAD}2026-11-25,Game,80,,,\r\n`;
    await coach.throwImport.add({ ...fileOf(csv), withoutBad: false });
    expect(await told(academy, "session_without_room")).toEqual([WHO.coach, WHO.guardian]);
  });

  it.each([
    [
      "no columns it knows",
      "a,b\r\n1,2\r\n",
      "The first line names the columns; missing: Day, Kind, Pitches.",
    ],
    ["a column twice", "Day,Kind,Pitches,day\r\n1,2,3,4\r\n", "The column Day is there twice."],
    ["no rows", IMPORT_TEMPLATE, "The file holds no rows below its columns."],
    ["nothing but space", " \r\n", "The file is empty."],
    [
      "an open quotation mark",
      `${HEAD}2026-04-18,Game,45,,,"open\r\n`,
      "The file cannot be read up to line 3: a quotation mark is open or out of place.",
    ],
    [
      "too many rows",
      `Day,Kind,Pitches\n${"2026-04-18,Game,45\n".repeat(MOST_IMPORT_ROWS + 1)}`,
      "The file holds 2001 rows; at most 2000 at once.",
    ],
    [
      "an endless row",
      `${HEAD}2026-04-18,Game,45,,,${"x".repeat(5000)}\r\n`,
      "The file cannot be read up to line 2: it is too long.",
    ],
  ])("with %s is refused with a sentence", async (_, csv, sentence) => {
    const academy = await makeAcademy();
    const coach = await academy.as(WHO.coach);
    const message = `${sentence} Nothing was logged.`;
    await refused(academy, () => coach.throwImport.preview(fileOf(csv)), { message });
    await refused(academy, () => coach.throwImport.add({ ...fileOf(csv), withoutBad: true }), { message });
  });

  it("is for coaches and admins alone", async () => {
    const academy = await makeAcademy();
    for (const personId of [WHO.coach, WHO.otherCoach, WHO.admin]) {
      const staff = await academy.as(personId);
      await expect(staff.throwImport.preview(fileOf(GOOD))).resolves.toBeDefined();
    }
    for (const personId of [WHO.guardian, WHO.otherGuardian, WHO.teen.personId]) {
      const family = await academy.as(personId);
      await refused(academy, () => family.throwImport.preview(fileOf(GOOD)), { code: "NOT_FOUND" });
      await refused(academy, () => family.throwImport.add({ ...fileOf(GOOD), withoutBad: true }), {
        code: "NOT_FOUND",
      });
    }
  });
});

describe("reading the file", () => {
  it.each([
    ["a byte order mark", "\uFEFFDay,Kind,Pitches\r\n2026-04-18,Game,45\r\n"],
    ["semicolons", "Day;Kind;Pitches\n2026-04-18;Game;45\n"],
    ["tabs and another order", "Pitches\tDay\tKind\n45\t2026-04-18\tGame"],
    ["columns in other letters", "day , KIND,pitches\n2026-04-18,Game,45\n"],
    ["lines of nothing", "Day,Kind,Pitches\n\n,,\n2026-04-18,Game,45\n\n"],
  ])("takes %s", (_, text) => {
    const file = readThrowsFile(text);
    expect(file).toMatchObject({
      ok: true,
      rows: [{ problem: null, cells: { Day: "2026-04-18", Kind: "Game", Pitches: "45", Note: "" } }],
    });
  });

  it("names lines as the file has them, rows over several lines and empty ones counted", () => {
    const text = 'Day,Kind,Pitches,Note\n\n2026-04-18,Game,45,"two\nlines"\n2026-04-19,Game,1,\n';
    const file = readThrowsFile(text);
    expect(file.ok && file.rows.map((row) => row.line)).toEqual([4, 5]);
  });

  it("names the columns it leaves aside, and rows with more fields than columns", () => {
    const file = readThrowsFile("Day,Kind,Pitches,Weather\n2026-04-18,Game,45,wind,extra\n");
    expect(file).toMatchObject({
      unknownColumns: ["Weather"],
      rows: [{ problem: "It has 5 fields, the first line 4." }],
    });
  });
});
