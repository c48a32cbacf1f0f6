import type { RuleBook } from "../rule-book";
import { ages } from "./count-bands";

const REGULATION =
  "North Dakota High School Activities Association, pitch count regulation for 2017, under NFHS Baseball Rules, rule 6-1-6 (6-2-6 when adopted in July 2016)";

/** A sample of a state's high-school rule of 2017. Intentional walks are not counted; two games a day are. */
export const NORTH_DAKOTA_2017: RuleBook = {
  id: "north-dakota-high-school-2017",
  name: "North Dakota high school, sample of 2017",
  source: REGULATION,
  standing: "sample",
  sampleYear: 2017,
  ageBasis: { kind: "on_day" },
  rules: [
    {
      ...{ kind: "pitch_count", level: "limit", source: REGULATION },
      ...{ effectiveFrom: "2017-01-01", effectiveUntil: null },
      ageBands: [ages(13, 19, 30, 45, 60, 75, 120)],
      ...{ restCountsFrom: "total", finishesBatter: false, intentionalWalkPitches: 0 },
    },
  ],
  advice: [],
  notes: [
    "Figures of 2017 as reported then: the association may have changed them.",
    "The rule goes by the school's team, not by age: ages 13 to 19 stand in.",
    "Two games on one day are allowed here; Little League allows one.",
    "Intentional walks do not count here; Little League counts four pitches for each.",
    "The national federation sets no numbers: each state association has its own, and a pitcher who throws with both arms has one count.",
  ],
};
