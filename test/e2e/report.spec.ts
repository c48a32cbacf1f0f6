import type { Page } from "@playwright/test";
import { expect, expectAccessible, PHONE, test } from "./academy";
import { athletesOf, idOf } from "./demo-records";
import { fillSeason } from "./full-season";

const FOCUS = "Land on a firm front leg in every bullpen of the winter.";

/** Prints a page as a browser does and counts the sheets: two on A4 and on Letter, whatever the theme on the screen. */
async function expectTwoPages(page: Page, what: string) {
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme });
    for (const format of ["A4", "Letter"]) {
      const pdf = await page.pdf({ preferCSSPageSize: true, format });
      const sheets = pdf.toString("latin1").match(/\/Type\s*\/Page\b/g) ?? [];
      expect.soft(sheets.length, `${what} on ${format}, ${colorScheme}`).toBe(2);
    }
  }
  await page.emulateMedia({ colorScheme: "light" });
}

/** On paper: white even in the dark, no ways to anywhere, headings that keep what follows, a foot that says whose it is. */
async function expectPaper(page: Page, foot: RegExp) {
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  const ground = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  expect(ground).toBe("rgb(255, 255, 255)");
  await expect(page.getByRole("navigation")).toHaveCount(0);
  await expect(page.getByRole("button")).toHaveCount(0);
  await expect(page.locator("footer").filter({ visible: true })).toHaveCount(0);
  await expect(page.getByText(foot)).toBeVisible();
  const breaks = await page.evaluate(() =>
    [...document.querySelectorAll("h1, h2")].map((each) => getComputedStyle(each).breakAfter),
  );
  expect(new Set(breaks)).toEqual(new Set(["avoid"]));
  await page.emulateMedia({ media: null, colorScheme: "light" });
}

async function expectBothThemes(page: Page) {
  await expectAccessible(page, "light");
  await expectAccessible(page, "dark");
}

async function makeLink(guardian: Page): Promise<string> {
  await guardian.getByRole("button", { name: "Make a link" }).click();
  const dialog = guardian.getByRole("dialog");
  await dialog.getByText("30 days", { exact: true }).click();
  await dialog.getByRole("button", { name: "Make the link" }).click();
  await expect(guardian.getByText(/The link is open until .+ 2026/)).toBeVisible();
  const address = await guardian.getByText(/\/season\/[\w-]{43}$/).textContent();
  return new URL(address ?? "").pathname;
}

const wordsOf = (page: Page) => page.getByRole("main").textContent();

test("a coach writes the focus, a guardian makes a link, a visitor reads it, and ended it is gone", async ({
  academy,
}) => {
  const [athleteId = ""] = athletesOf("guardian");
  const [name, familyName] = [nameOf(athleteId, "given_name"), nameOf(athleteId, "family_name")];
  const coach = await academy.as("coach");
  const guardian = await academy.as("guardian", PHONE);
  const visitor = await academy.visitor();
  await test.step("the coach writes what the next season is for", async () => {
    await coach.goto(`/athletes/${athleteId}`);
    await coach.getByRole("link", { name: "Season report" }).click();
    await coach.getByRole("button", { name: "Write the next season’s focus" }).click();
    await coach.getByLabel("In plain words").fill(FOCUS);
    await coach.getByRole("button", { name: "Write it into the report" }).click();
    await expect(coach.getByRole("dialog")).toHaveCount(0);
    await expect(coach.getByText(FOCUS)).toBeVisible();
    await expect(coach.getByRole("button", { name: "Make a link" })).toHaveCount(0);
    await expectBothThemes(coach);
    await expectTwoPages(coach, "the coach's page");
    await expectPaper(coach, new RegExp(`${name} ${familyName} · 2026 · as of`));
  });
  let path = "";
  await test.step("the guardian reads it and makes a link", async () => {
    await guardian.goto(`/family/${athleteId}/season`);
    await guardian.getByRole("link", { name: "Season report" }).click();
    await expect(guardian.getByText(FOCUS)).toBeVisible();
    await expect(guardian.getByRole("button", { name: /focus/ })).toHaveCount(0);
    path = await makeLink(guardian);
    await expectBothThemes(guardian);
    await expectTwoPages(guardian, "the guardian's page");
  });
  await test.step("whoever has the link reads it, with a given name and an initial", async () => {
    const answer = await visitor.goto(path);
    expect(answer?.headers()).toMatchObject({
      "referrer-policy": "no-referrer",
      "cache-control": expect.stringContaining("no-store"),
      "x-robots-tag": expect.stringContaining("noindex"),
    });
    await expect(visitor.getByRole("heading", { name: "What did the season bring?" })).toBeVisible();
    await expect(visitor.getByText(FOCUS)).toBeVisible();
    const sent = await visitor.content();
    expect(sent).toContain(`${name} ${familyName.charAt(0)}.`);
    for (const kept of [familyName, idOf("SELECT born_on FROM athlete WHERE id = ?", athleteId), athleteId]) {
      expect(sent).not.toContain(kept);
    }
    await expect(visitor.locator("video, img, canvas")).toHaveCount(0);
    await expectBothThemes(visitor);
    await expectTwoPages(visitor, "the visitor's page");
    await expectPaper(visitor, new RegExp(`${name} ${familyName.charAt(0)}\\. · 2026 · as of`));
  });
  await test.step("ended, it opens what a link that never was opens", async () => {
    await guardian.getByRole("button", { name: "End it" }).click();
    await expect(guardian.getByText("The link is ended.")).toBeVisible();
    await visitor.reload();
    await expect(visitor.getByRole("heading", { name: "This link does not open a report" })).toBeVisible();
    const ended = await wordsOf(visitor);
    await visitor.goto("/season/never-made");
    expect(await wordsOf(visitor)).toBe(ended);
    await expectBothThemes(visitor);
  });
});

test("a report is two pages with nothing in it, and with more than paper holds", async ({ academy }) => {
  const coach = await academy.as("coach");
  for (const [cue, printed] of [
    ["Stay tall over the back leg, then land soft and stand firm. ".repeat(9).slice(0, 500), 8],
    ["Land soft", 11],
  ] as const) {
    const athleteId = fillSeason(cue);
    await coach.goto(`/athletes/${athleteId}/report?from=2024-01-01&to=2024-12-31`);
    await expect(coach.getByText("Nothing was logged in this time.")).toBeVisible();
    await expectTwoPages(coach, "an empty season");
    await coach.goto(`/athletes/${athleteId}/report?from=2026-01-01&to=2026-12-31`);
    await expect(coach.getByText(/^[56]\d corrections were worked on: /)).toBeVisible();
    await writeLongFocus(coach);
    const rows = coach.getByRole("listitem").filter({ hasText: "given on" });
    expect(await rows.count()).toBeGreaterThan(50);
    await coach.emulateMedia({ media: "print" });
    await expect(rows.filter({ visible: true })).toHaveCount(printed);
    await coach.emulateMedia({ media: null });
    await fillChanges(coach);
    await expectTwoPages(coach, `a full season with cues of ${cue.length} characters`);
  }
});

async function writeLongFocus(coach: Page) {
  await coach.getByRole("button", { name: /focus/ }).click();
  await coach.getByLabel("In plain words").fill("A word and another word. ".repeat(24).slice(0, 600));
  await coach.getByRole("button", { name: "Write it into the report" }).click();
  await expect(coach.getByRole("dialog")).toHaveCount(0);
}

/** As many changes as paper takes, each as long as a row can be: the rows of the corrections stand in for them. */
async function fillChanges(coach: Page) {
  await coach.evaluate(() => {
    const [worked, changed] = ["worked on", "changed beyond"].map((words) =>
      [...document.querySelectorAll("section")].find((each) =>
        each.querySelector("h2")?.textContent?.includes(words),
      ),
    );
    const rows = worked?.querySelector("ul")?.cloneNode(true) as Element | undefined;
    for (const row of rows?.querySelectorAll("[data-print=no]") ?? []) row.remove();
    [...(rows?.children ?? [])].slice(5).forEach((row) => {
      row.remove();
    });
    if (rows) changed?.append(rows);
  });
}

const nameOf = (athleteId: string, column: "given_name" | "family_name") =>
  idOf(`SELECT p.${column} FROM person p JOIN athlete t ON t.person_id = p.id WHERE t.id = ?`, athleteId);
