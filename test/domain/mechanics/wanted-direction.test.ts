import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  directionColumns,
  directionInWords,
  type StatedDirection,
  statedDirection,
  statedDirectionSchema,
} from "@/server/domain/mechanics/wanted-direction";

describe("a stated direction", () => {
  const said = fc.oneof(
    fc.constant(null),
    fc.constantFrom<StatedDirection>({ kind: "more" }, { kind: "less" }),
    fc.integer({ min: -1000, max: 1000 }).map((to): StatedDirection => ({ kind: "nearer", to })),
  );

  it("comes back from its columns as it was said", () => {
    fc.assert(
      fc.property(said, (stated) => {
        expect(statedDirection(directionColumns(stated))).toEqual(stated);
      }),
    );
  });

  it("keeps the value beside nearer alone", () => {
    expect(directionColumns({ kind: "nearer", to: 0 })).toEqual({ wanted: "nearer", wantedTo: 0 });
    expect(directionColumns({ kind: "less" })).toEqual({ wanted: "less", wantedTo: null });
    expect(directionColumns(null)).toEqual({ wanted: null, wantedTo: null });
  });

  it("says nothing when it is nearer to nothing", () => {
    expect(statedDirection({ wanted: "nearer", wantedTo: null })).toBeNull();
    expect(statedDirectionSchema.safeParse({ kind: "nearer" }).success).toBe(false);
    expect(statedDirectionSchema.safeParse({ kind: "nearer", to: 1001 }).success).toBe(false);
  });

  it("is read with its value in the unit of the measure", () => {
    expect(directionInWords({ kind: "nearer", to: 0 }, "trunk_tilt_side")).toBe("nearer to 0°");
    expect(directionInWords({ kind: "more" }, "finish_hold")).toBe("more");
  });
});
