import { readFileSync } from "node:fs";
import type { Page } from "@playwright/test";
import { parse } from "csv-parse/sync";
import { type Academy, expect, expectAccessible, PHONE, test } from "./academy";
import { chooseFamily, database, eventFrames, type Family, startOf } from "./demo-records";
import { dayInWords, markEvents, openPhase, saved, sendClip, setNumber } from "./hands";

const HOUR_MS = 3_600_000;

/** The corrections the coach gives, with the phase their checkpoint is judged in. */
const GIVEN = [
  { phase: "Wind-up", checkpoint: "Gaze level and on the plate" },
  { phase: "Stride", checkpoint: "Hips lead" },
  { phase: "Acceleration", checkpoint: "Front knee firms from contact to release" },
];

test("a clip from a phone becomes corrections, a reply, a check, a session, a log and a line of the month", async ({
  academy,
}) => {
  test.setTimeout(600_000);
  const family = chooseFamily();
  const guardian = await academy.as({ email: family.guardianEmail }, PHONE);
  const coach = await academy.as("coach");

  const roundId = await test.step("the guardian sends a clip", () =>
    sendClip(guardian, academy, family, { which: "first", roundId: null }));
  await test.step("the coach takes it and writes a review", () => review(coach, family, roundId));
  await test.step("the guardian reads it and ticks a day of practice", () =>
    read(guardian, academy, family, roundId));
  academy.setClock(academy.clockMs() + 26 * HOUR_MS);
  await test.step("the guardian answers with a new clip", () =>
    sendClip(guardian, academy, family, { which: "reply", roundId }));
  await test.step("the coach checks whether each correction took", () => check(coach, roundId));
  await test.step("the guardian logs a game", () => logGame(guardian, family));
  const sessionId = await test.step("the coach books: refused by the arm, then a time that fits", () =>
    book(coach, family, roundId));
  await test.step("the coach checks in and logs the session", () => logSession(coach, academy, sessionId));
  await test.step("the admin exports the month, and it adds up", () =>
    exportMonth(academy, family, sessionId));
});

async function review(page: Page, family: Family, roundId: string) {
  await page.goto("/reviews?show=all");
  await expectAccessible(page);
  const row = page.getByRole("listitem").filter({ hasText: family.name });
  await row.getByRole("button", { name: "Take", exact: true }).click();
  await page.waitForURL(`**/reviews/${roundId}`);
  await markEvents(page, eventFrames("first"));
  for (const { phase, checkpoint } of GIVEN) {
    await openPhase(page, phase);
    await page
      .getByRole("radiogroup", { name: new RegExp(`^${checkpoint}`) })
      .getByText("1", { exact: true })
      .click();
    await page.getByRole("button", { name: `Correct: ${checkpoint}` }).click();
    const editor = page.getByRole("region", { name: new RegExp(`^Correction \\d: ${checkpoint}`) });
    await editor.getByRole("group", { name: "Usual cues" }).getByRole("button").first().click();
    await editor.getByRole("group", { name: "Usual drills" }).getByRole("button").first().click();
  }
  await openPhase(page, "Follow-through");
  await page.getByRole("button", { name: "Keep: Finish balanced and held" }).click();
  await saved(page, () =>
    page.getByLabel("Keep: what is good here").fill("You stay on your feet to the end."),
  );
  await page.reload();
  await expect(
    page.getByRole("region", { name: "Slip" }).getByText("Gaze level and on the plate"),
  ).toBeVisible();
  await expectAccessible(page);
  await page.getByRole("button", { name: "Send to family" }).click();
  const dialog = page.getByRole("alertdialog");
  await expect(dialog).toContainText("3 corrections");
  await dialog.getByRole("button", { name: "Send the review" }).click();
  await expect(page.getByText("The review is with the family.")).toBeVisible();
}

async function read(page: Page, academy: Academy, family: Family, roundId: string) {
  await page.goto(`/family/${family.athleteId}/rounds/${roundId}`);
  await expectAccessible(page);
  for (const { checkpoint } of GIVEN) await expect(page.getByText(checkpoint).first()).toBeVisible();
  const first = page.getByRole("listitem").filter({ hasText: "Gaze level and on the plate" });
  await first.getByRole("button", { name: "See it" }).click();
  const practised = `Practised ${dayInWords(academy.today())}`;
  const day = first.getByRole("button", { name: practised });
  await day.click();
  await expect(day).toHaveAttribute("aria-pressed", "true");
  await page.reload();
  await expect(page.getByRole("button", { name: practised }).first()).toHaveAttribute("aria-pressed", "true");
}

async function check(page: Page, roundId: string) {
  await page.goto(`/reviews/${roundId}`);
  await expectAccessible(page);
  const choices = page.getByRole("radiogroup", { name: "Did it take?" });
  await expect(choices.first()).toBeVisible();
  const verdicts = ["Yes", "Partly", "Not yet"];
  for (let place = 0; place < (await choices.count()); place += 1) {
    await choices
      .nth(place)
      .getByText(verdicts[place % 3] ?? "Yes", { exact: true })
      .click();
  }
  await expect(page.getByText(/^Saved/)).toBeVisible();
  await page.getByRole("button", { name: "Settle the round" }).click();
  await page.getByRole("alertdialog").getByRole("button", { name: "Settle the round" }).click();
  await expect(page.getByText("The round is settled and the family is told.")).toBeVisible();
}

async function logGame(page: Page, family: Family) {
  await page.goto(`/family/${family.athleteId}/throws`);
  await expectAccessible(page);
  const form = page.getByRole("form", { name: "Log throws" });
  await form.getByText("60", { exact: true }).click();
  await form.getByText("Game", { exact: true }).click();
  await form.getByRole("button", { name: /^Log 60 .*today$/ }).click();
  await expect(page.getByText(/^Logged: 60/)).toBeVisible();
}

/** The finder says which days the arm rests; more pitches than the book leaves are refused; fewer are booked. */
async function book(page: Page, family: Family, roundId: string): Promise<string> {
  await page.goto(`/calendar/find?athlete=${family.athleteId}&round=${roundId}`);
  await expectAccessible(page);
  await expect(page.getByRole("heading", { name: /^Days the arm rests/ })).toBeVisible();
  await expect(page.getByText(/First day free by the book: /)).toBeVisible();
  await page
    .getByRole("button", { name: /^Take .*at most \d+ by the book/ })
    .last()
    .click();
  const dialog = page.getByRole("dialog");
  await setNumber(dialog, "Pitches planned", "95");
  await dialog.getByRole("button", { name: "Book it" }).click();
  await expect(dialog.getByRole("alert")).toContainText(
    /Nothing was booked\. Plan at most \d+ by the book\./,
  );
  await setNumber(dialog, "Pitches planned", "20");
  await dialog.getByRole("button", { name: "Book it" }).click();
  await page.waitForURL(/\/calendar\/ses_/);
  await expect(page.getByRole("heading", { name: "Who comes, and what do we work on?" })).toBeVisible();
  await expectAccessible(page);
  return new URL(page.url()).pathname.split("/").at(-1) ?? "";
}

/** The clock goes to the session's start: asked first, then logged with one correction seen to hold. */
async function logSession(page: Page, academy: Academy, sessionId: string) {
  academy.setClock(startOf(sessionId) + 60_000);
  await page.goto(`/calendar/${sessionId}`);
  const asked = page.getByRole("form", { name: /^Check in / });
  await asked
    .getByRole("radiogroup", { name: /^Thrown since/ })
    .getByText("No", { exact: true })
    .click();
  await asked
    .getByRole("radiogroup", { name: "Does anything hurt?" })
    .getByText("No", { exact: true })
    .click();
  await asked.getByRole("button", { name: "Record the check-in" }).click();
  const log = page.getByRole("form", { name: "Log the session" });
  await setNumber(log, "Pitches thrown", "18");
  await log
    .getByRole("radiogroup", { name: "Gaze level and on the plate" })
    .getByText("Holds now", { exact: true })
    .click();
  await log.getByRole("button", { name: "Log the session" }).click();
  await expect(page.getByText("Logged: throws and charges are written down.")).toBeVisible();
  const sqlite = database();
  const held = sqlite
    .prepare(
      "SELECT c.state FROM session_work w JOIN session_log l ON l.id = w.session_log_id JOIN correction c ON c.id = w.correction_id WHERE l.session_id = ? AND w.outcome = 'confirmed'",
    )
    .all(sessionId);
  const thrown = sqlite.prepare("SELECT pitches FROM throw_entry WHERE session_id = ?").all(sessionId);
  sqlite.close();
  expect(held).toEqual([{ state: "held" }]);
  expect(thrown).toEqual([{ pitches: 18 }]);
}

/** The file has the session's row, and its total is the sum of its rows to the cent. */
async function exportMonth(academy: Academy, family: Family, sessionId: string) {
  const month = new Date(startOf(sessionId)).toISOString().slice(0, 7);
  const admin = await academy.as("admin");
  await admin.goto(`/ledger?month=${month}`);
  await expectAccessible(admin);
  const download = admin.waitForEvent("download");
  await admin.getByRole("link", { name: /export/i }).click();
  const rows: Record<string, string>[] = parse(readFileSync(await (await download).path(), "utf8"), {
    columns: true,
    bom: true,
  });
  const own = rows.filter((row) => Object.values(row).includes(sessionId));
  expect(own).toHaveLength(1);
  expect(Object.values(own[0] ?? {})).toEqual(expect.arrayContaining([family.name, "18"]));
  const isTotal = (row: Record<string, string>) => Object.values(row)[0] === "Total";
  const cents = (row: Record<string, string>) => Math.round(Number(row.Amount) * 100);
  const total = rows.filter(isTotal).reduce((sum, row) => sum + cents(row), 0);
  const summed = rows.filter((row) => !isTotal(row)).reduce((sum, row) => sum + cents(row), 0);
  expect(summed).toBeGreaterThan(0);
  expect(total).toBe(summed);
}
