import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { expect, expectAccessible, test } from "./academy";
import { serve } from "./start-academy";

const PORT = 3978;
const ADDRESS = `http://localhost:${PORT}`;

test("an empty academy is made by its first visit, is there after a restart, and has no second first admin", async ({
  academy,
}) => {
  const folder = mkdtempSync(join(tmpdir(), "slabside-own-"));
  let stop = await serve(folder, PORT, ["--empty"]);
  const page = await academy.visitor();
  await page.goto(ADDRESS);
  await expect(page.getByRole("heading", { name: "Whose academy is this?" })).toBeVisible();
  await expectAccessible(page);
  for (const [field, words] of Object.entries({
    Name: "Alder Fork Pitching",
    "Name of the site": "The Mill Shed",
    "Given name": "Wanda",
    "Family name": "Ostrander",
    "E-mail": "wanda@slabside.example",
    Password: "kettle birch anthem nine",
  })) {
    await page.getByLabel(field, { exact: true }).fill(words);
  }
  const zone = page.getByRole("combobox", { name: "Time zone" });
  await zone.fill("Denver");
  await page.getByRole("option", { name: "America/Denver" }).click();
  await page.getByText("I coach as well").click();
  await page.getByRole("button", { name: "Start the academy" }).click();
  await page.waitForURL(`${ADDRESS}/academy`);
  await expect(page.getByText("Alder Fork Pitching").first()).toBeVisible();
  await expectAccessible(page);
  for (const address of ["/today", "/reviews", "/athletes", "/calendar", "/ledger", "/academy/sites"]) {
    await page.goto(ADDRESS + address);
    await expect(page.getByRole("heading", { level: 1 }), address).toHaveCount(1);
    await expectAccessible(page);
  }
  await leave(page);
  await stop();
  stop = await serve(folder, PORT);
  await page.goto(`${ADDRESS}/academy/sites`);
  await expect(page.getByText("The Mill Shed").first()).toBeVisible();
  await page.goto(`${ADDRESS}/first`);
  await expect(page.getByRole("heading", { name: "Whose academy is this?" })).toHaveCount(0);
  await leave(page);
  await stop();
  rmSync(folder, { recursive: true, force: true });
});

/** A page that is still fetching ahead when its server stops would tell of it on the console. */
async function leave(page: Page) {
  await page.goto("about:blank");
}
