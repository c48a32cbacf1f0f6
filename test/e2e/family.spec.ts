import { expect, expectAccessible, PHONE, test } from "./academy";
import { athletesOf, chooseOtherFamily, idOf } from "./demo-records";
import { setDay, takeFirstTime } from "./hands";

const HOUR_MS = 3_600_000;

test("a guardian stops the throwing for pain, clears it, and books, moves and cancels in a few taps", async ({
  academy,
}) => {
  const family = chooseOtherFamily();
  const home = `/family/${family.athleteId}`;
  const guardian = await academy.as({ email: family.guardianEmail }, PHONE);
  const coach = await academy.as("coach");
  await test.step("pain stops all throwing, and only the family ends it", async () => {
    await guardian.goto(`${home}/throws`);
    await guardian.getByRole("button", { name: "Report pain" }).click();
    await guardian.getByRole("dialog").getByRole("button", { name: "Stop all throwing" }).click();
    await expect(guardian.getByText("No throwing: pain was reported.")).toBeVisible();
    await expectAccessible(guardian);
    await coach.goto(`/athletes/${family.athleteId}/throws`);
    await expect(coach.getByText("No throwing: pain was reported.")).toBeVisible();
    await expect(coach.getByRole("button", { name: "Clear it" })).toHaveCount(0);
    await coach.goto(`/calendar/find?athlete=${family.athleteId}`);
    await expect(coach.getByText("No mound throws for now")).toBeVisible();
  });
  await test.step("cleared with a day and who examined the arm", async () => {
    academy.setClock(academy.clockMs() + 48 * HOUR_MS);
    await guardian.goto(home);
    await guardian.getByRole("button", { name: "Clear it" }).click();
    const dialog = guardian.getByRole("dialog");
    await dialog.getByRole("button", { name: "Clear the arm" }).click();
    await expect(dialog.getByLabel("Who examined the arm")).toHaveAccessibleDescription(/Say who examined/);
    await setDay(dialog, "No symptoms since", academy.today());
    await dialog.getByLabel("Who examined the arm").fill("Our physician");
    await dialog.getByRole("button", { name: "Clear the arm" }).click();
    await expect(guardian.getByText("No throwing: pain was reported.")).toHaveCount(0);
  });
  await test.step("three taps from the first screen to a booked time", async () => {
    await guardian.getByRole("link", { name: "Find a time" }).click();
    await takeFirstTime(guardian, "Take it");
    await expectAccessible(guardian);
  });
  await test.step("moved, then cancelled with a reason that everybody is told", async () => {
    const booked = guardian.url();
    await guardian.getByRole("link", { name: "Move it" }).click();
    await guardian.waitForURL(/times\?move=/);
    await takeFirstTime(guardian, "Move here");
    expect(guardian.url()).toBe(booked);
    await guardian.getByRole("button", { name: "Cancel it" }).click();
    const dialog = guardian.getByRole("dialog");
    await dialog.getByLabel("Reason").fill("A cold");
    await dialog.getByRole("button", { name: "Cancel it" }).click();
    await expect(guardian.getByRole("button", { name: "Cancel it" })).toHaveCount(0);
    await expect(guardian.getByText(/cancelled/i).first()).toBeVisible();
    const claims = idOf("SELECT CAST(count(*) AS TEXT) FROM claim WHERE session_id = ?", idIn(booked));
    expect(claims).toBe("0");
  });
});

const idIn = (address: string) => new URL(address).pathname.split("/").at(-1) ?? "";

test("an athlete reads, logs and reports, and leaves to a guardian what a guardian decides", async ({
  academy,
}) => {
  const athlete = await academy.as("athlete", PHONE);
  const [athleteId = ""] = athletesOf("athlete");
  await expect(athlete).toHaveURL(new RegExp(athleteId));
  await expectAccessible(athlete);
  await athlete.goto(`/family/${athleteId}/times`);
  await expect(athlete.getByText("A guardian books, moves and cancels.")).toBeVisible();
  await athlete.goto(`/family/${athleteId}/consent`);
  await expect(athlete.getByRole("button", { name: /consent/i })).toHaveCount(0);
  await athlete.goto(`/family/${athleteId}/throws`);
  const form = athlete.getByRole("form", { name: "Log throws" });
  await form.getByText("Flat ground", { exact: true }).click();
  await form.getByText("30", { exact: true }).click();
  await form.getByRole("button", { name: /^Log 30 .*today$/ }).click();
  await expect(athlete.getByText(/^Logged: 30/)).toBeVisible();
  await athlete.getByRole("button", { name: "Report pain" }).click();
  const dialog = athlete.getByRole("dialog");
  await dialog.getByText("Unusual fatigue", { exact: true }).click();
  await dialog.getByRole("button", { name: "Stop all throwing" }).click();
  await expect(athlete.getByText("No throwing: unusual fatigue was reported.")).toBeVisible();
  await expect(athlete.getByRole("button", { name: "Clear it" })).toHaveCount(0);
  const told = idOf(
    `SELECT CAST(count(DISTINCT n.to_person_id) AS TEXT) FROM notice n
     JOIN guardianship g ON g.guardian_person_id = n.to_person_id
     WHERE g.athlete_id = ? AND n.kind LIKE 'pain%' AND n.created_at_ms = ?`,
    athleteId,
    String(academy.clockMs()),
  );
  expect(Number(told), "guardians who were told").toBeGreaterThan(0);
});
