/** Wed 25 Nov 2026, 15:00 in New York. */
export const TEST_NOW_MS = Date.UTC(2026, 10, 25, 20, 0);
export const ZONE = "America/New_York";

/** The people of the test academy; athletes' ids are `ath_*`, persons' `per_*`. */
export const WHO = {
  admin: "per_admin",
  coach: "per_coach",
  otherCoach: "per_other_coach",
  guardian: "per_guardian",
  otherGuardian: "per_other_guardian",
  /** 12 years old, right-handed, of `guardian`, with `coach`. */
  child: { athleteId: "ath_child", personId: "per_child" },
  /** 16 years old, left-handed, of `guardian`, with `coach`. */
  teen: { athleteId: "ath_teen", personId: "per_teen" },
  /** 19 years old, acts for themselves, with `coach`. */
  adult: { athleteId: "ath_adult", personId: "per_adult" },
  /** 12 years old, of `otherGuardian`, with `otherCoach`. */
  stranger: { athleteId: "ath_stranger", personId: "per_stranger" },
  site: "site_north",
  moundLane: "lane_1",
  secondMoundLane: "lane_2",
  flatLane: "lane_3",
} as const;
