import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CAMERA_VIEWS, DELIVERY_PHASES } from "@/server/domain/mechanics/delivery";
import { findCheckpoints, isInSight, type PictureNow } from "@/server/domain/mechanics/find-checkpoints";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";

const nothingOpen: PictureNow = { view: null, phase: null, events: [] };
const names = (typed: string, now: Partial<PictureNow> = {}) =>
  findCheckpoints(typed, STARTING_LIBRARY, { ...nothingOpen, ...now }).map(({ name }) => name);

describe("looking for a checkpoint by a few letters", () => {
  it.each([
    ["hl", "Hips lead"],
    ["sl", "Stride length"],
    ["gl", "Gaze level and on the plate"],
    ["fb", "Finish balanced and held"],
    ["hs", "Head steady at release"],
    ["balpe", "Balanced at peak knee height"],
    ["bp", "Balanced at peak knee height"],
    ["Frkn f", "Front knee firms from contact to release"],
    ["elbow", "Elbow at shoulder height"],
    ["e s", "Elbow at shoulder height"],
  ])("%s finds %s first", (typed, name) => {
    expect(names(typed)[0]).toBe(name);
  });

  it("offers first what is judged on the frame in sight, then the phase that is open", () => {
    const knees = ["Front knee bent at contact", "Front knee firms from contact to release"];
    expect(names("fk").slice(0, 2)).toEqual(knees);
    expect(names("fk", { phase: "acceleration" })[0]).toBe(knees[1]);
    expect(names("fk", { phase: "acceleration", events: ["front_foot_contact"] })[0]).toBe(knees[0]);
  });

  it("puts what cannot be seen from the view last, even where it fits best", () => {
    const fromBehind = findCheckpoints("g", STARTING_LIBRARY, { ...nothingOpen, view: "back" });
    const seen = fromBehind.map((each) => isInSight(each, "back"));
    expect(seen).toEqual(seen.toSorted((a, b) => Number(b) - Number(a)));
    expect(fromBehind.map(({ name }) => name)).toContain("Gaze level and on the plate");
  });

  it("finds words in their order only, whatever is left out between", () => {
    expect(names("cr")).toContain("Front knee firms from contact to release");
    expect(names("rc")).not.toContain("Front knee firms from contact to release");
    expect(names("qx")).toEqual([]);
  });

  it("begins with what belongs to the moment when nothing is typed", () => {
    const [first] = findCheckpoints("", STARTING_LIBRARY, {
      view: "open_side",
      phase: "acceleration",
      events: [],
    });
    expect(first?.phase).toBe("acceleration");
    expect(names("")).toHaveLength(STARTING_LIBRARY.length);
  });

  it("finds every checkpoint first by its whole name, and always by its initials", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...STARTING_LIBRARY),
        fc.constantFrom(null, ...DELIVERY_PHASES),
        ({ name, views }, phase) => {
          const [view = null] = views;
          expect(names(name, { view, phase })[0]).toBe(name);
          const initials = name.split(/[\s-]+/).map((word) => word.charAt(0));
          expect(names(initials.join(""), { view, phase })).toContain(name);
        },
      ),
    );
  });

  it("answers at once for a name and letters that fit in a great many ways", () => {
    const row = { id: "a", phase: "stride", event: "finish", views: ["front"] } as const;
    const found = findCheckpoints(
      `${"a".repeat(20)}b`,
      [{ ...row, views: ["front"], name: "a ".repeat(30) }],
      {
        ...nothingOpen,
      },
    );
    expect(found).toEqual([]);
  });

  it("takes any text without an error and never names a checkpoint twice", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: "grapheme", maxLength: 40 }),
        fc.constantFrom(null, ...CAMERA_VIEWS),
        (typed, view) => {
          const found = names(typed, { view });
          expect(new Set(found).size).toBe(found.length);
        },
      ),
    );
  });
});
