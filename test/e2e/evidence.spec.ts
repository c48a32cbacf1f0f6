import { expect, expectAccessible, test } from "./academy";
import { idOf, personOf } from "./demo-records";

test("from a correction on the queue to its evidence and to the frame in two clicks", async ({ academy }) => {
  test.setTimeout(360_000);
  const coach = await academy.as("coach");
  const place = idOf(
    `SELECT c.athlete_id || '/checkpoints/' || c.checkpoint_id AS id FROM round r
     JOIN correction c ON c.athlete_id = r.athlete_id AND c.state IN ('given', 'showing')
     JOIN judgement j ON j.athlete_id = c.athlete_id AND j.checkpoint_id = c.checkpoint_id
     JOIN clip k ON k.id = j.clip_id AND k.state IN ('ready', 'drawing')
     WHERE r.state IN ('received', 'taken', 'answered') AND r.coach_person_id = ? AND j.frame IS NOT NULL
     ORDER BY r.due_at_ms, c.given_at_ms`,
    personOf("coach"),
  );
  await coach.goto("/reviews?show=mine");
  await coach.locator(`a[href="/athletes/${place}"]`).first().click();
  await expect(coach.getByRole("heading", { level: 1, name: "Did it change?" })).toBeVisible();

  const days = coach.getByRole("group", { name: /day by day$/ });
  await days.focus();
  await coach.keyboard.press("Home");
  const first = await coach.locator("figcaption").first().textContent();
  await coach.keyboard.press("End");
  await expect(coach.locator("figcaption").first()).not.toHaveText(first ?? "");
  await expectAccessible(coach);
  await expectAccessible(coach, "dark");

  const frame = coach.getByRole("link", { name: /^Latest/ });
  const address = (await frame.getAttribute("href")) ?? "";
  await frame.click();
  await expect(coach).toHaveURL(new RegExp(address.replace("?", "\\?")));
  const number = new URL(address, "http://slabside.example").searchParams.get("frame");
  /* The demo's clips may still be drawn; they appear by themselves. */
  await expect(coach.getByText(`frame ${number} /`).first()).toBeVisible({ timeout: 300_000 });
});
