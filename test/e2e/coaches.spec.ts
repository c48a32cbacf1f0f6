import type { Page } from "@playwright/test";
import { type Academy, expect, PHONE, test } from "./academy";
import { idOf, personOf } from "./demo-records";
import { openPhase, saved } from "./hands";

test("coaches race for a round, hand it over by the keyboard, write in it by keys and ask for a new clip", async ({
  academy,
}) => {
  test.setTimeout(480_000);
  const coach = await academy.as("coach");
  const other = await academy.as({ email: "ines.caldera@slabside.example" });
  const athleteName = await test.step("two take one round at once: one has it, the other is told who", () =>
    race(coach, other));
  await test.step("handed over without a mouse", () => handOver(coach, other, athleteName));
  await test.step("a phase is judged and a moment marked by keys", () => writeByKeys(coach));
  await test.step("a new clip is asked for, and the family reads why", () => askRetake(coach, academy));
});

async function race(coach: Page, other: Page): Promise<string> {
  await Promise.all([coach.goto("/reviews?show=free"), other.goto("/reviews?show=free")]);
  const row = coach.getByRole("listitem").filter({ has: coach.getByRole("button", { name: "Take" }) });
  const name = (await row.first().getByRole("link").first().textContent()) ?? "";
  const take = (page: Page) =>
    page.getByRole("listitem").filter({ hasText: name }).getByRole("button", { name: "Take" }).click();
  await Promise.all([take(coach), take(other)]);
  const told = (page: Page) => page.getByRole("alert").filter({ hasText: "took this round a moment ago" });
  await expect
    .poll(async () => {
      const pages = [coach, other];
      const inRoom = pages.filter((page) => /\/reviews\/rnd_/.test(page.url())).length;
      const refused = await Promise.all(pages.map((page) => told(page).count()));
      return [inRoom, refused.reduce((sum, count) => sum + count, 0)];
    })
    .toEqual([1, 1]);
  return name;
}

async function handOver(coach: Page, other: Page, athleteName: string) {
  const page = /\/reviews\/rnd_/.test(coach.url()) ? coach : other;
  await page.goto("/reviews?show=mine");
  const row = page.getByRole("listitem").filter({ hasText: athleteName });
  await row.getByRole("link", { name: "Go on" }).focus();
  await page.keyboard.press("Shift+Enter");
  const dialog = page.getByRole("dialog", { name: `Hand over the round of ${athleteName}` });
  await expect(dialog.getByRole("button", { name: /To which coach/ })).toBeFocused();
  await page.keyboard.press("Enter");
  await page.keyboard.type("Ruben");
  await page.keyboard.press("Enter");
  await dialog.getByRole("button", { name: "Hand over" }).press("Enter");
  await expect(page.getByText(`${athleteName}’s round is with Ruben Achterberg now.`)).toBeVisible();
}

async function writeByKeys(coach: Page) {
  const roundId = idOf(
    "SELECT id FROM round WHERE state = 'taken' AND coach_person_id = ? ORDER BY id",
    personOf("coach"),
  );
  await coach.goto(`/reviews/${roundId}`);
  // The demo's clips may still be drawn; they appear by themselves.
  await expect(coach.getByText("frame 1 /")).toBeVisible({ timeout: 300_000 });
  // A moment is marked on a picture that is there.
  await expect(coach.getByRole("slider", { name: "Frame" })).toBeEnabled();
  await coach.getByRole("heading", { level: 1 }).click();
  for (const [key, shown] of [
    ["Shift+ArrowRight", 11],
    ["ArrowRight", 12],
    ["ArrowLeft", 11],
    ["ArrowRight", 12],
  ] as const) {
    await coach.keyboard.press(key);
    await expect(coach.getByText(`frame ${shown} /`)).toBeVisible();
  }
  await saved(coach, () => coach.keyboard.press("1"));
  await expect(coach.getByRole("button", { name: "First movement, frame 12: show" })).toBeVisible();
  await test.step("what was typed an instant before the page was loaded anew is there, and can be gone on with", async () => {
    await openPhase(coach, "Stride");
    await coach.getByRole("button", { name: "Keep: Hips lead" }).click();
    const words = coach.getByLabel("Keep: what is good here");
    await saved(coach, () => words.fill(""));
    await words.pressSequentially("You lead with the hip");
    coach.once("dialog", (asked) => void asked.accept());
    await coach.reload();
    await openPhase(coach, "Stride");
    await expect(coach.getByLabel("Keep: what is good here")).toHaveValue("You lead with the hip");
    await saved(coach, () => coach.getByLabel("Keep: what is good here").pressSequentially("."));
    await expect(coach.getByText("A newer draft was saved elsewhere")).toHaveCount(0);
  });
}

async function askRetake(coach: Page, academy: Academy) {
  await coach.goto("/reviews?show=mine");
  const row = coach
    .getByRole("listitem")
    .filter({ has: coach.getByRole("button", { name: /^More for/ }) })
    .filter({ hasText: "First clip" })
    .filter({ hasText: "yours" })
    .first();
  const name = (await row.getByRole("link").first().textContent()) ?? "";
  await row.getByRole("button", { name: /^More for/ }).click();
  await coach.getByRole("menuitem", { name: "Ask for a new clip…" }).click();
  await coach.getByRole("dialog").getByRole("textbox").fill("The feet are out of the picture.");
  await coach.getByRole("button", { name: "Ask for a new clip" }).click();
  await expect(coach.getByText(`${name}’s family has been asked for a new clip.`)).toBeVisible();
  const whose = (column: string) =>
    idOf(
      `SELECT ${column} FROM round r JOIN athlete t ON t.id = r.athlete_id JOIN person p ON p.id = t.person_id
       JOIN guardianship g ON g.athlete_id = t.id JOIN account a ON a.person_id = g.guardian_person_id
       WHERE r.state = 'retake' AND p.given_name || ' ' || p.family_name = ? ORDER BY a.email`,
      name,
    );
  const guardian = await academy.as({ email: whose("a.email") }, PHONE);
  await guardian.goto(`/family/${whose("t.id")}/rounds/${whose("r.id")}`);
  await expect(guardian.getByText("The feet are out of the picture.")).toBeVisible();
}
