import { describe, expect, it } from "vitest";
import {
  asTemplate,
  EMPTY_TEMPLATE,
  withChangedLine,
  withLine,
  withoutLine,
} from "@/components/academy/template-draft";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import { reviewTemplateSchema } from "@/server/domain/reviews/review-template";

const change = (changes: Parameters<typeof withChangedLine>[2], draft = EMPTY_TEMPLATE) =>
  withChangedLine(draft, 0, changes, STARTING_LIBRARY);
const lineOf = (draft: typeof EMPTY_TEMPLATE) => draft.lines[0];

describe("a usual review as it is written", () => {
  it("takes the usual words of a checkpoint that is chosen, and of another in their place", () => {
    const hips = change({ checkpointId: "hips-lead" });
    expect(lineOf(hips)).toMatchObject({
      words: "Lead with your front pocket",
      drill: "Hip bumps into a padded wall",
    });
    const stride = change({ checkpointId: "stride-length" }, hips);
    expect(lineOf(stride)).toMatchObject({ words: "Ride the back leg" });
  });

  it("never writes over words of one's own", () => {
    const own = change({ words: "My cue" }, change({ checkpointId: "hips-lead" }));
    expect(lineOf(change({ checkpointId: "stride-length" }, own))).toMatchObject({
      words: "My cue",
      drill: "Stride to a chalk mark moved out a hand at a time",
    });
  });

  it("says what is good, without a drill, once it is a keep", () => {
    const keep = change({ kind: "keep" }, change({ checkpointId: "hips-lead" }));
    const hips = STARTING_LIBRARY.find((each) => each.id === "hips-lead");
    expect(lineOf(keep)).toMatchObject({ words: hips?.clearLooksLike, drill: "" });
    expect(reviewTemplateSchema.safeParse({ ...asTemplate(keep), name: "First look" }).success).toBe(true);
  });

  it("gains and loses lines", () => {
    const two = withLine(change({ kind: "keep" }));
    expect(two.lines.map(({ kind }) => kind)).toEqual(["keep", "keep"]);
    expect(withoutLine(two, 0).lines).toHaveLength(1);
  });

  it("with an empty age is refused at that age", () => {
    const sent = asTemplate({ ...change({ checkpointId: "hips-lead" }), name: "First look", toAge: null });
    const { error } = reviewTemplateSchema.safeParse(sent);
    expect(error?.issues.map(({ path }) => path.join("."))).toContain("toAge");
  });
});
