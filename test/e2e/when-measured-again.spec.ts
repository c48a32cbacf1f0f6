import { expect, expectAccessible, LAPTOP, PHONE, test } from "./academy";
import { database } from "./demo-records";

/** The measure that waits longest for a second one on a film that is there, and what the first was worth. */
function firstWaiting(): { requestId: string; value: number; measurementId: string } {
  const sqlite = database();
  const row = sqlite
    .prepare(
      `SELECT r.id AS requestId, m.value, m.id AS measurementId FROM remeasure_request r
       JOIN measurement m ON m.id = r.measurement_id JOIN clip c ON c.id = m.clip_id
       WHERE r.done_at_ms IS NULL AND c.state IN ('ready', 'drawing') AND m.kind = 'front_knee_flexion'
       ORDER BY c.state DESC, r.asked_at_ms LIMIT 1`,
    )
    .get() as { requestId: string; value: number; measurementId: string } | undefined;
  sqlite.close();
  if (!row) throw new Error("Nothing waits for a second measure.");
  return row;
}

/** The latest second measure of a frame. */
function repeatOf(measurementId: string): { value: number } | undefined {
  const sqlite = database();
  const row = sqlite
    .prepare("SELECT value FROM measurement WHERE repeat_of_id = ? ORDER BY rowid DESC LIMIT 1")
    .get(measurementId);
  sqlite.close();
  return row as { value: number } | undefined;
}

test("a coach asks for a second measure of whoever comes first", async ({ academy }) => {
  const coach = await academy.as("coach", PHONE);
  await coach.goto("/reviews/measure-again");
  await coach
    .getByRole("button", { name: /^Ask for a second measure: Front-knee flexion/ })
    .first()
    .click();
  const dialog = coach.getByRole("dialog", { name: "Ask for a second measure" });
  await expect(dialog).toContainText("sees neither its points nor its value");
  await expectAccessible(coach, "dark");
  await dialog.getByRole("button", { name: "Ask for it" }).click();
  await expect(dialog).toBeHidden();
  await expect(coach.getByRole("link", { name: /^Measure again: Front-knee flexion/ }).first()).toBeVisible();
});

test("a frame is measured again without its points or value in sight, and both are told after", async ({
  academy,
}) => {
  test.setTimeout(360_000);
  const { requestId, value, measurementId } = firstWaiting();
  const coach = await academy.as("coach", LAPTOP);
  await coach.goto(`/reviews/measure-again/${requestId}`);
  const surface = coach.locator("[data-points]");
  await expect(surface, "the demo's film is drawn").toBeVisible({ timeout: 300_000 });
  await expect(coach.getByRole("status").filter({ hasText: "front hip" })).toBeVisible();
  const page = await coach.content();
  expect(page, "what it was worth is nowhere on the page").not.toContain(String(value));
  const keep = coach.getByRole("button", { name: "Keep this measure" });
  await expect(keep).toBeDisabled();
  const box = await surface.boundingBox();
  if (!box) throw new Error("no picture");
  for (const [x, y] of [
    [0.5, 0.4],
    [0.5, 0.6],
    [0.6, 0.7],
  ] as const) {
    await coach.mouse.click(box.x + box.width * x, box.y + box.height * y);
  }
  await expectAccessible(coach);
  await keep.click();
  await expect(coach.getByText(`before ${Math.round(value)}°`)).toBeVisible();
  const again = repeatOf(measurementId);
  await expect(coach.getByText(`Now ${Math.round(again?.value ?? Number.NaN)}°`)).toBeVisible();
  await coach.getByRole("link", { name: "On to the next" }).click();
  await expect(coach).toHaveURL(/measure-again$/);
  await expect(coach.locator(`a[href$="${requestId}"]`)).toHaveCount(0);
});
