import { describe, expect, it } from "vitest";
import { directionOf, WAY_CHOICES } from "@/components/academy/direction-said";
import { WANTED_WAYS } from "@/server/domain/mechanics/wanted-direction";

function form(fields: Record<string, string>): FormData {
  const data = new FormData();
  for (const [name, value] of Object.entries(fields)) data.set(name, value);
  return data;
}

describe("which way a measure is better, as a form says it", () => {
  it.each([
    [{}, null],
    [{ wanted: "none" }, null],
    [{ wanted: "more" }, { kind: "more" }],
    [{ wanted: "less", wantedTo: "7" }, { kind: "less" }],
    [
      { wanted: "nearer", wantedTo: "-4.5" },
      { kind: "nearer", to: -4.5 },
    ],
    [
      { wanted: "nearer", wantedTo: "0" },
      { kind: "nearer", to: 0 },
    ],
    [{ wanted: "nearer", wantedTo: "" }, "no value"],
    [{ wanted: "nearer" }, "no value"],
  ])("%o", (fields, said) => {
    expect(directionOf(form(fields as Record<string, string>))).toEqual(said);
  });

  it("offers every way by a name of its own", () => {
    expect(new Set(WANTED_WAYS.map((way) => WAY_CHOICES[way])).size).toBe(WANTED_WAYS.length);
  });
});
