import { describe, expect, it } from "vitest";
import { DELIVERY_EVENTS, type DeliveryEvent } from "@/server/domain/mechanics/delivery";
import { MEASURE_KINDS, type MeasureKind } from "@/server/domain/mechanics/measure-kind";
import { publishedInWords, publishedRanges } from "@/server/domain/mechanics/published-ranges";
import means from "../../reference/delivery-means.json";

const { kageyama_2015: published } = means;

describe("published ranges", () => {
  it.each([
    ["stride_length", "front_foot_contact", published.stride_length_pct_height],
    ["front_knee_flexion", "front_foot_contact", published.front_knee_flexion_contact_deg],
    ["front_knee_flexion", "ball_release", published.front_knee_flexion_release_deg],
    ["trunk_tilt_forward", "front_foot_contact", published.trunk_tilt_contact_deg],
    ["trunk_tilt_forward", "ball_release", published.trunk_tilt_release_deg],
  ] as const)("of %s at %s are those of the tables, by level and with their n", (kind, event, of) => {
    const [young, old, ...more] = publishedRanges(kind, event);
    expect(more).toEqual([]);
    expect([young?.mean, young?.sd, old?.mean, old?.sd]).toEqual([...of.adolescent, ...of.collegiate]);
    expect(published.groups.adolescent.startsWith(`n=${young?.n},`)).toBe(true);
    expect(published.groups.collegiate.startsWith(`n=${old?.n},`)).toBe(true);
  });

  it("are none where no study was found", () => {
    const found = MEASURE_KINDS.flatMap((kind: MeasureKind) =>
      DELIVERY_EVENTS.filter((event: DeliveryEvent) => publishedRanges(kind, event).length > 0),
    );
    expect(found).toHaveLength(5);
    expect(publishedRanges("glove_height", "ball_release")).toEqual([]);
  });

  it("are told with n and source, as context and never as pass or fail", () => {
    const words = publishedRanges("stride_length", "front_foot_contact").map((each) =>
      publishedInWords("stride_length", each),
    );
    expect(words[0]).toBe(
      "Adolescent pitchers aged 12 to 15: 82.9 % of standing height, standard deviation 6.1 % (n = 32; Kageyama et al. 2015, J Sports Sci Med 14:246). Context, not a target.",
    );
    expect(words.join(" ")).not.toMatch(/pass|fail|normal|should/i);
    const [tilt] = publishedRanges("trunk_tilt_forward", "front_foot_contact");
    if (!tilt) throw new Error("There is one.");
    expect(publishedInWords("trunk_tilt_forward", tilt)).toMatch(/: −2\.1°, standard deviation 6\.6°/);
  });
});
