import type { Page } from "@playwright/test";
import { expect, expectAccessible, PHONE, test } from "./academy";
import { chooseTwelveYearOld, type Family } from "./demo-records";
import { setDay, setNumber } from "./hands";

/* A week in which the demo has nothing booked: Saturday 9 January 2027, 15:00 in New York. */
const SATURDAY_MS = Date.UTC(2027, 0, 9, 20);
const [TUESDAY, THURSDAY, NEXT_SATURDAY] = ["2027-01-12", "2027-01-14", "2027-01-16"] as const;

test("a game on Saturday rests the arm on Tuesday, leaves Thursday its number, and the next outing trims it", async ({
  academy,
}) => {
  academy.setClock(Math.max(academy.clockMs(), SATURDAY_MS));
  const family = chooseTwelveYearOld();
  const guardian = await academy.as({ email: family.guardianEmail }, PHONE);
  const coach = await academy.as("coach");
  await test.step("a parent logs 68 pitches on Saturday", () => logGame(guardian, family));
  await test.step("Tuesday is refused, with the first free day", async () => {
    await findBullpen(coach, family, TUESDAY);
    await expect(coach.getByText("No time fits all of that")).toBeVisible();
    await expect(coach.getByText(/68 on Sat 9 Jan asks for four days of rest/)).toBeVisible();
    await expect(coach.getByText("First day free by the book: Thursday 14 January.")).toBeVisible();
    await expectAccessible(coach);
  });
  await test.step("Thursday fits, with its number", async () => {
    await findBullpen(coach, family, THURSDAY);
    await expect(
      coach.getByRole("button", { name: /^Take it: Thu 14 Jan .* at most 85 by the book/ }).first(),
    ).toBeVisible();
  });
  await test.step("with an outing on Saturday, Thursday's bullpen is what the outing can bear", async () => {
    await planOuting(guardian);
    await findBullpen(coach, family, THURSDAY);
    await coach
      .getByRole("button", { name: /^Take it: Thu 14 Jan .* at most 35 by the book/ })
      .first()
      .click();
    const dialog = coach.getByRole("dialog");
    await expect(dialog.getByRole("textbox", { name: "Pitches planned" })).toHaveValue("35");
    await setNumber(dialog, "Pitches planned", "40");
    await dialog.getByRole("button", { name: "Book it" }).click();
    await expect(dialog.getByRole("alert")).toContainText("Plan at most 35 by the book.");
    await setNumber(dialog, "Pitches planned", "35");
    await dialog.getByRole("button", { name: "Book it" }).click();
    await coach.waitForURL(/\/calendar\/ses_/);
  });
  await test.step("what was said on Friday for Sunday is still what Friday knew", () => askAgain(guardian));
  await test.step("the board says so for the week", () => readBoard(coach, family));
});

async function logGame(guardian: Page, family: Family) {
  await guardian.goto(`/family/${family.athleteId}/throws`);
  const form = guardian.getByRole("form", { name: "Log throws" });
  await form.getByText("Other", { exact: true }).click();
  await setNumber(form, "The number", "10000");
  await expect(form.getByRole("textbox", { name: "The number" })).toHaveValue("400");
  await setNumber(form, "The number", "68");
  await form.getByText("Game", { exact: true }).click();
  await form.getByRole("button", { name: /^Log 68 .*today$/ }).click();
  await expect(guardian.getByText(/^Logged: 68/)).toBeVisible();
  await expectAccessible(guardian);
}

async function findBullpen(coach: Page, family: Family, day: string) {
  await coach.goto(
    `/calendar/find?athletes=${family.athleteId}&kind=bullpen&minutes=30&pitches=40&from=${day}&to=${day}&coach=&site=`,
  );
}

async function planOuting(guardian: Page) {
  const form = guardian.getByRole("form", { name: "Plan an outing" });
  await setDay(form, "Game or showcase on", NEXT_SATURDAY);
  await setNumber(form, "Pitches planned", "50");
  await form.getByRole("button", { name: "Plan the outing" }).click();
  await expect(guardian.getByText("Sat 16 Jan, 50 pitches planned")).toBeVisible();
}

async function askAgain(guardian: Page) {
  await guardian.getByText("What was said on a day, by what was known then").click();
  const form = guardian.getByRole("form", { name: "What was said on a day" });
  await setDay(form, "For the day", "2027-01-10");
  await setDay(form, "As known by the end of", "2027-01-08");
  await form.getByRole("button", { name: "Ask the book again" }).click();
  await expect(guardian.getByText("At most 85 by the book")).toBeVisible();
  await setDay(form, "As known by the end of", "2027-01-09");
  await form.getByRole("button", { name: "Ask the book again" }).click();
  await expect(
    guardian
      .getByText("None by the book")
      .or(guardian.getByText(/^Resting/i))
      .first(),
  ).toBeVisible();
  await expectAccessible(guardian);
}

async function readBoard(coach: Page, family: Family) {
  await coach.goto("/arms?coach=all&order=name&page=1");
  await expectAccessible(coach);
  await expect(coach.getByRole("row").filter({ hasText: family.name })).toBeVisible();
}
