import { describe, expect, it } from "vitest";
import { destinations } from "@/components/people/destinations";

const PAGES = [
  { href: "/today", label: "Today" },
  { href: "/athletes", label: "Athletes" },
];
const KIT = { athleteId: "ath_1", name: "Kit Marsh", coachName: "Cole Rivers" };

describe("places to go", () => {
  it("are all pages before anything is typed", () => {
    expect(destinations(PAGES, [KIT], " ").map((place) => place.href)).toEqual(["/today", "/athletes"]);
  });

  it("are pages by part of their name, then athletes with their coach", () => {
    expect(destinations(PAGES, [KIT], "AT")).toEqual([
      { href: "/athletes", label: "Athletes", hint: "page" },
      { href: "/athletes/ath_1", label: "Kit Marsh", hint: "with Cole Rivers" },
    ]);
  });

  it("are nine at most", () => {
    const many = Array.from({ length: 12 }, (_, index) => ({ ...KIT, athleteId: `ath_${index}` }));
    expect(destinations(PAGES, many, "k")).toHaveLength(9);
  });
});
