import type { Page } from "@playwright/test";
import { expect, expectAccessible, PHONE, test } from "./academy";
import { chooseOtherFamily, database } from "./demo-records";

test("throws logged without signal are kept on the phone through a restart of the page, and are on the log once when it is back", async ({
  academy,
}) => {
  const family = chooseOtherFamily();
  const guardian = await academy.as({ email: family.guardianEmail }, PHONE);
  const throws = `/family/${family.athleteId}/throws`;
  await guardian.goto(throws);
  await guardian.evaluate(async () => void (await navigator.serviceWorker.ready));
  await guardian.reload();
  const before = entriesOf(family.athleteId);
  await loseSignal(guardian);
  await test.step("the page opens all the same", async () => {
    await guardian.goto(throws).catch(() => undefined);
    await guardian.waitForURL("**/without-signal");
    await expect(guardian.getByText("The academy cannot be reached.")).toBeVisible();
    await expectAccessible(guardian);
  });
  await test.step("an entry is kept, and still there when the page is opened anew", async () => {
    const form = guardian.getByRole("form", { name: "Log throws" });
    await form.getByText("35", { exact: true }).click();
    await form.getByText("Long toss", { exact: true }).click();
    await form.getByRole("button", { name: /^Log 35 / }).click();
    await expect(guardian.getByText("1 entry is not on the log yet.")).toBeVisible();
    await guardian.reload();
    await expect(guardian.getByText("1 entry is not on the log yet.")).toBeVisible();
    expect(entriesOf(family.athleteId)).toBe(before);
  });
  await test.step("with signal it is sent by itself, once", async () => {
    await findSignal(guardian);
    await guardian.goto(throws);
    await expect.poll(() => entriesOf(family.athleteId)).toBe(before + 1);
    await guardian.reload();
    await expect(guardian.getByText(/not on the log yet/)).toHaveCount(0);
    expect(entriesOf(family.athleteId)).toBe(before + 1);
  });
});

const COMMANDS = "**/api/**";

/** The browser forgets for a moment, while a page is loaded anew, that it is without signal: commands never get through. */
async function loseSignal(page: Page) {
  await page.context().route(COMMANDS, (request) => request.abort("internetdisconnected"));
  await page.context().setOffline(true);
}

async function findSignal(page: Page) {
  await page.context().setOffline(false);
  await page.context().unroute(COMMANDS);
}

function entriesOf(athleteId: string): number {
  const sqlite = database();
  const count = sqlite
    .prepare("SELECT count(*) FROM throw_entry WHERE athlete_id = ?")
    .pluck()
    .get(athleteId);
  sqlite.close();
  return Number(count);
}
