import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import type { ReviewTemplate, TemplateLine } from "@/server/domain/reviews/review-template";
import type { World } from "./world";

const keep = (checkpointId: string, words: string): TemplateLine => ({
  ...{ kind: "keep", checkpointId, words, drill: "" },
});

/** A correction in the library's own words: its first cue and its first drill. */
function correction(checkpointId: string): TemplateLine {
  const checkpoint = STARTING_LIBRARY.find((each) => each.id === checkpointId);
  const [words = ""] = checkpoint?.cues ?? [];
  const [drill = ""] = checkpoint?.drills ?? [];
  return { kind: "correction", checkpointId, words, drill };
}

const USUAL: readonly ReviewTemplate[] = [
  {
    ...{ name: "First clip, 9 to 12", fromAge: 9, toAge: 12 },
    lines: [
      keep("slow-first-move", "A quiet start: nothing hurries before the lift."),
      keep("balanced-finish", "You stay on your feet to the end."),
      correction("gaze-on-plate"),
      correction("hips-lead"),
      correction("glove-controlled"),
    ],
  },
  {
    ...{ name: "First clip, 13 and older", fromAge: 13, toAge: 99 },
    lines: [
      keep("balanced-lift", "Tall and gathered over the back leg."),
      keep("balanced-finish", "The finish is held, ready to field."),
      correction("stride-length"),
      correction("front-knee-firms"),
    ],
  },
];

/** Writes down what the coaches usually say of a first clip, by age. */
export function buildUsualReviews(world: World): void {
  for (const { lines, ...template } of USUAL) {
    world.rows.reviewTemplate.push({ id: world.id("tpl"), ...template, lines: JSON.stringify(lines) });
  }
}
