import { describe, expect, it } from "vitest";
import { armsHref, type BoardPlace, boardPlace } from "@/components/arms/arms-address";

const START: BoardPlace = { coach: null, team: null, site: null, order: "limit", page: 1 };

describe("the address of a board", () => {
  it.each<[string, BoardPlace]>([
    ["/arms", START],
    ["/arms?coach=all", { ...START, coach: "all" }],
    ["/arms?team=Herons+12U&site=site_north", { ...START, team: "Herons 12U", site: "site_north" }],
    ["/arms?order=name&page=3", { ...START, order: "name", page: 3 }],
  ])("is %s, and leads back to where it was made", (href, place) => {
    expect(armsHref(place)).toBe(href);
    expect(boardPlace(Object.fromEntries(new URL(href, "http://here").searchParams))).toEqual(place);
  });

  it.each([
    [{ page: "0" }],
    [{ page: "-2" }],
    [{ page: "1.5" }],
    [{ page: "many" }],
    [{ page: "1000" }],
    [{ order: "fastest" }],
    [{ coach: "" }],
    [{ team: ["Herons", "Otters"] }],
  ])("that makes no sense, as %j, is where a board begins", (search) => {
    expect(boardPlace(search)).toEqual(START);
  });
});
