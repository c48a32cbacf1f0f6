import { expect, it } from "vitest";
import { clearanceNotice, painNotice } from "@/server/domain/notices/pain-notices";

it("says of pain who reported it for which day, that all throwing stops, and gives no advice", () => {
  const notice = painNotice({
    ...{ name: "Kit Marsh", kind: "unusual_fatigue", feltOn: "2026-11-25", byName: "Gwen Marsh" },
  });
  expect(notice.subject).toBe("Unusual fatigue reported for Kit Marsh: no throwing");
  expect(notice.body).toContain("was reported on Wed 25 Nov 2026 by Gwen Marsh.");
  expect(notice.body).toContain("Nothing here is medical advice.");
});

it("says of a clearance who gave it and since when nothing hurts", () => {
  const notice = clearanceNotice({
    ...{ name: "Kit Marsh", symptomFreeSince: "2026-11-20", byName: "Gwen Marsh" },
  });
  expect(notice.body).toContain("Gwen Marsh cleared Kit Marsh: no symptoms since Fri 20 Nov 2026.");
});
