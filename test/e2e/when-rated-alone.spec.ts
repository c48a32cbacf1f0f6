import { expect, expectAccessible, LAPTOP, PHONE, test } from "./academy";
import { database } from "./demo-records";

/** The set of the demo that is being rated. */
function openSet(): string {
  return textOf("SELECT id FROM blind_set WHERE closed_at_ms IS NULL ORDER BY made_at_ms LIMIT 1");
}

/** What the coach of the demo said of the frames of a set, in the order in which it was said. */
function saidIn(setId: string): string {
  return textOf(
    `SELECT group_concat(coalesce(CAST(value AS integer), 'unseen')) FROM (
       SELECT r.value FROM blind_rating r JOIN blind_item i ON i.id = r.item_id
       JOIN account a ON a.person_id = r.coach_person_id
       WHERE i.set_id = ? AND a.email = 'coach@slabside.example' ORDER BY r.rated_at_ms, r.rowid)`,
    setId,
  );
}

function textOf(query: string, ...values: string[]): string {
  const sqlite = database();
  const row = sqlite.prepare(query).get(...values) as Record<string, string | null> | undefined;
  sqlite.close();
  return Object.values(row ?? {})[0] ?? "";
}

test("an admin draws a set, a coach judges it by keys alone, and nothing is told before it is closed", async ({
  academy,
}) => {
  test.setTimeout(600_000);
  const admin = await academy.as("admin", LAPTOP);
  await admin.goto("/academy/agreement");
  await admin.getByRole("button", { name: "Draw a set" }).click();
  const dialog = admin.getByRole("dialog", { name: "Draw a set" });
  await dialog.getByLabel("What is it called?").fill("Knee and glove");
  await dialog.getByRole("button", { name: "Draw it" }).click();
  await expect(dialog.getByText("Choose a checkpoint at least.").first()).toBeVisible();
  await dialog.getByText("Open side", { exact: true }).click();
  await dialog.getByRole("checkbox", { name: /^Front knee bent at contact/ }).click({ force: true });
  await dialog.getByRole("textbox", { name: "How many frames?" }).fill("5");
  await dialog.getByRole("textbox", { name: "How many frames?" }).blur();
  await expect(dialog.getByRole("status")).toHaveText(/frames are there to draw from\.$/);
  await expectAccessible(admin, "light");
  await dialog.getByRole("button", { name: "Draw it" }).click();
  await admin.waitForURL(/\/academy\/agreement\/bls_/);
  await expect(admin.getByRole("heading", { name: "How far is everybody?" })).toBeVisible();
  const setId = admin.url().split("/").at(-1) ?? "";

  const coach = await academy.as("coach", LAPTOP);
  await coach.goto(`/reviews/blind/${setId}`);
  for (const [at, key] of ["2", "u", "3", "0", "1"].entries()) {
    const frame = coach.getByRole("region", { name: `Frame ${at + 1} of 5` });
    const keep = frame.getByRole("button", { name: "Keep and go on" });
    await expect(keep, "the demo's film is drawn").toBeVisible({ timeout: 300_000 });
    await expect(keep).toBeDisabled();
    await coach.keyboard.press(key);
    await expect(keep).toBeEnabled();
    await coach.keyboard.press("Enter");
  }
  await expect(coach.getByText("All 5 frames are rated")).toBeVisible();
  expect(saidIn(setId)).toBe("2,unseen,3,0,1");
  await coach.getByRole("link", { name: "See who is how far" }).click();
  await expect(coach.getByRole("heading", { name: "How far is everybody?" })).toBeVisible();
  await expect(coach.getByText("Weighted kappa")).toHaveCount(0);
});

test("closed, a set tells how far coaches agree and leads to the frames they differ on", async ({
  academy,
}) => {
  const admin = await academy.as("admin", PHONE);
  await admin.goto(`/academy/agreement/${openSet()}`);
  await admin.getByRole("button", { name: "Close the set" }).click();
  await admin.getByRole("alertdialog").getByRole("button", { name: "Close the set" }).click();
  await expect(admin.getByRole("heading", { name: "Where do we differ?" })).toBeVisible();
  await expect(admin.getByText(/Weighted kappa −?\d\.\d\d/).first()).toBeVisible();
  await expectAccessible(admin, "dark");

  const coach = await academy.as("coach", LAPTOP);
  await coach.goto("/academy/agreement");
  await coach.getByRole("link", { name: "At front foot contact" }).click();
  const frame = coach.getByRole("link", { name: /of the set: open side, frame \d+/ }).first();
  await expect(frame).toHaveAttribute("href", /^\/reviews\/rnd_\w+\?clip=clp_\w+&frame=\d+$/);
});

test("a request for a second measure is withdrawn, and waits no more", async ({ academy }) => {
  const admin = await academy.as("admin", LAPTOP);
  await admin.goto("/reviews/measure-again");
  const withdraw = admin.getByRole("button", { name: /^Withdraw the request:/ });
  await expect(withdraw.first()).toBeVisible();
  const before = await withdraw.count();
  await withdraw.first().click();
  const dialog = admin.getByRole("alertdialog", { name: "Withdraw this request?" });
  await expect(dialog).toContainText("What was measured before stays");
  await dialog.getByRole("button", { name: "Withdraw the request" }).click();
  await expect(dialog).toBeHidden();
  await expect(withdraw).toHaveCount(before - 1);
});
