import type { Page } from "@playwright/test";
import { type Academy, expect, expectAccessible, PHONE, signIn, test } from "./academy";
import { idOf } from "./demo-records";
import { setDay } from "./hands";

test("an admin adds a family, lets the guardian in by a link that works once, prices work, and shuts a sign-in at once", async ({
  academy,
}) => {
  const admin = await academy.as("admin");
  await test.step("the family", () => addFamily(admin));
  const link = await test.step("the invitation", () => invite(admin));
  const guardian = await test.step("the guardian joins", () => join(academy, link));
  await test.step("the guardian consents", () => consent(guardian));
  await test.step("a price from today", () => price(admin));
  await test.step("the sign-in is disabled", async () => {
    await openPerson(admin, "Noor Castellane");
    await admin.getByRole("button", { name: "Disable the sign-in" }).click();
    await admin.getByRole("alertdialog").getByRole("button", { name: "Disable it now" }).click();
    await expect(admin.getByText("Disabled: they cannot sign in.")).toBeVisible();
    await guardian.reload();
    await expect(guardian).toHaveURL(/\/sign-in/);
  });
});

async function addFamily(admin: Page) {
  await admin.goto("/academy/people/new");
  const form = admin.getByRole("form", { name: "New athlete" });
  await setDay(form, "Born on", "2015-03-09");
  for (const [field, values] of [
    ["Given name", ["Ilse", "Noor"]],
    ["Family name", ["Castellane", "Castellane"]],
  ] as const) {
    for (const [place, value] of values.entries()) await form.getByLabel(field).nth(place).fill(value);
  }
  await form.getByRole("button", { name: "Add the athlete" }).click();
  // A guardian without an address cannot be told anything: refused, and what was typed is kept.
  await expect(form.getByLabel("E-mail").nth(1)).toHaveAttribute("aria-invalid", "true");
  await expect(form.getByLabel("Given name").first()).toHaveValue("Ilse");
  await form.getByLabel("E-mail").nth(1).fill("noor.castellane@slabside.example");
  await form.getByRole("button", { name: "Add the athlete" }).click();
  await expect(admin.getByRole("heading", { name: "Who is Ilse Castellane?" })).toBeVisible();
  await expect(admin.getByText("Under 13 there is no sign-in of one’s own: a guardian acts.")).toBeVisible();
  await expectAccessible(admin);
}

async function openPerson(admin: Page, name: string) {
  await admin.goto(
    `/academy/people/${idOf("SELECT id FROM person WHERE given_name || ' ' || family_name = ?", name)}`,
  );
}

async function invite(admin: Page): Promise<string> {
  await openPerson(admin, "Noor Castellane");
  await admin.getByRole("button", { name: "Invite" }).click();
  await expect(admin.getByText("The invitation is in the outbox, under Academy, Notices.")).toBeVisible();
  await admin.goto("/academy/notices");
  const notice = admin.getByRole("listitem").filter({ hasText: "to Noor Castellane" }).first();
  await notice.getByText("to Noor Castellane").click();
  const link = /http\S+\/join\/\S+/.exec((await notice.textContent()) ?? "")?.[0] ?? "";
  return new URL(link).pathname;
}

async function join(academy: Academy, link: string): Promise<Page> {
  const page = await academy.visitor(PHONE);
  await page.goto(link);
  await expectAccessible(page);
  const password = page.getByLabel("New password");
  await password.fill("short");
  await page.getByRole("button", { name: "Keep this password" }).click();
  await expect(page.getByText("That password is too short", { exact: false })).toBeVisible();
  await password.fill("gravel teapot lantern ox");
  await page.getByRole("button", { name: "Keep this password" }).click();
  await page.waitForURL(/\/sign-in\?email=/);
  const other = await academy.visitor(PHONE);
  await other.goto(link);
  await expect(other.getByLabel("New password")).toHaveCount(0);
  await signIn(page, "noor.castellane@slabside.example", "gravel teapot lantern ox");
  return page;
}

async function consent(guardian: Page) {
  await expect(guardian.getByText("There is no consent to video of Ilse yet.")).toBeVisible();
  await expect(guardian.getByRole("link", { name: "Send a new clip" })).toHaveCount(0);
  await guardian.getByRole("link", { name: "Read it and decide" }).click();
  await guardian.getByRole("button", { name: "Give consent" }).click();
  await expect(guardian.getByRole("button", { name: "Withdraw consent" })).toBeVisible();
  await expectAccessible(guardian);
  await guardian.goto("/");
  await expect(guardian.getByRole("link", { name: "Send a new clip" })).toBeVisible();
}

async function price(admin: Page) {
  await admin.goto("/academy/rates");
  await admin.getByRole("button", { name: "Set a price: Bullpen" }).click();
  const dialog = admin.getByRole("dialog");
  await dialog.getByLabel("For each athlete").fill("71,5O");
  await dialog.getByRole("button", { name: "Set the price" }).click();
  await expect(dialog.getByLabel("For each athlete")).toHaveAccessibleDescription(/Enter an amount in USD/);
  await dialog.getByLabel("For each athlete").fill("71.50");
  await dialog.getByRole("button", { name: "Set the price" }).click();
  await expect(admin.getByRole("row", { name: /^Bullpen/ }).first()).toContainText("71.50");
}
