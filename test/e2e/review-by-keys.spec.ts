import { costOf } from "../bench/keystroke-level";
import { expect, expectAccessible, PHONE, test } from "./academy";
import { chooseFamily, eventFrames } from "./demo-records";
import { sendClip } from "./hands";
import { type Moments, writeSixFindings } from "./six-findings";

test("a review of six findings is marked, written and sent by keys alone", async ({ academy }) => {
  const family = chooseFamily();
  const guardian = await academy.as({ email: family.guardianEmail }, PHONE);
  const roundId = await sendClip(guardian, academy, family, { which: "first", roundId: null });
  const coach = await academy.as("coach");
  await coach.goto("/reviews?show=all");
  await coach
    .getByRole("listitem")
    .filter({ hasText: family.name })
    .getByRole("button", { name: "Take", exact: true })
    .press("Enter");
  await coach.waitForURL(`**/reviews/${roundId}`);
  await expect(coach.getByRole("slider", { name: "Frame" })).toBeEnabled();
  const moments = eventFrames("first") as unknown as Moments;
  const hands = await writeSixFindings(coach, {
    first_movement: moments.first_movement,
    peak_knee_height: moments.peak_knee_height,
    front_foot_contact: moments.front_foot_contact,
    ball_release: moments.ball_release,
    finish: moments.finish,
  });
  expect(costOf(hands.acts).seconds).toBeLessThanOrEqual(90);
  await expectAccessible(coach);
  await guardian.goto(`/family/${family.athleteId}/rounds/${roundId}`);
  await expect(guardian.getByText("Hips lead").first()).toBeVisible();
});
