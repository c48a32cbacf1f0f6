import { expect, it } from "vitest";
import { checkpointSchema } from "@/server/domain/mechanics/checkpoint";
import { checkpointIdFrom } from "@/server/domain/mechanics/checkpoint-id";

it.each([
  ["Glove stays near chest", "glove-stays-near-chest"],
  ["  Tête  steady! ", "tete-steady"],
  ["Élan", "elan"],
  ["膝", "checkpoint"],
  ["a".repeat(60), "a".repeat(50)],
])("makes an id of %s", (name, id) => {
  expect(checkpointIdFrom(name, new Set())).toBe(id);
  expect(checkpointSchema.shape.id.safeParse(id).success).toBe(true);
});

it("takes the first free number when the name is taken", () => {
  expect(checkpointIdFrom("Glove stays near chest", new Set(["glove-stays-near-chest"]))).toBe(
    "glove-stays-near-chest-2",
  );
  expect(checkpointIdFrom("Knee", new Set(["knee", "knee-2"]))).toBe("knee-3");
});
