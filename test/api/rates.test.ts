import { describe, expect, it } from "vitest";
import { charge } from "@/db/schema/ledger";
import { makeAcademy, TEST_NOW_MS, WHO } from "../helpers/academy";
import { because, type Caller, refuses } from "../helpers/refuses";

describe("prices", () => {
  it("change from a day on; taking the change out lets the old price go on", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    const change = { kind: "lesson", priceCents: 9000, effectiveFrom: "2027-01-01" } as const;
    const { rateId } = await admin.rates.setPrice(change);
    const lessons = async () => (await admin.rates.list({})).rates.filter((each) => each.kind === "lesson");
    expect(await lessons()).toMatchObject([
      { priceCents: 8000, effectiveTo: "2027-01-01" },
      { priceCents: 9000, effectiveTo: null },
    ]);
    await refuses(academy, WHO.admin, (api) => api.rates.setPrice(change), because("rates_overlap"));
    await admin.rates.remove({ rateId });
    expect(await lessons()).toMatchObject([{ priceCents: 8000, effectiveTo: null }]);
  });

  it("cannot begin before what was charged, nor be taken out once charged", async () => {
    const academy = await makeAcademy();
    await academy.db.insert(charge).values({
      id: "chg_1",
      athleteId: WHO.teen.athleteId,
      kind: "review",
      reviewId: "rev_1",
      coachPersonId: WHO.coach,
      siteId: WHO.site,
      chargedOn: "2026-11-20",
      rateId: "rate_review",
      amountCents: 3500,
      currency: "USD",
      atMs: TEST_NOW_MS,
    });
    const early = { kind: "review", priceCents: 4000, effectiveFrom: "2026-11-20" } as const;
    await refuses(academy, WHO.admin, (api) => api.rates.setPrice(early), because("settings_invalid"));
    const remove = (api: Caller) => api.rates.remove({ rateId: "rate_review" });
    await refuses(academy, WHO.admin, remove, because("in_use"));
    await (await academy.as(WHO.admin)).rates.setPrice({ ...early, effectiveFrom: "2026-11-21" });
  });

  it("are read by admins alone", async () => {
    const academy = await makeAcademy();
    await refuses(academy, WHO.coach, (api) => api.rates.list({}), { code: "NOT_FOUND" });
  });
});
