/** How much of a thing the academy has, as far as the first round and the first session need it. */
export interface AcademyCounts {
  sites: number;
  sitesWithHours: number;
  lanes: number;
  coaches: number;
  coachesWithHours: number;
  /** Kinds of work that have a price today. */
  pricedKinds: number;
  athletes: number;
}

/** What a new academy sets before its first round and first session, in the order that works. */
export const SETTING_UP = ["site_hours", "lanes", "coaches", "coach_hours", "rates", "athletes"] as const;

/** One of {@link SETTING_UP}. */
export type SettingUp = (typeof SETTING_UP)[number];

/**
 * What is still missing, in the order of {@link SETTING_UP}; empty once the academy can work.
 * @example stillToSet({ sites: 1, sitesWithHours: 0, lanes: 2, coaches: 1, coachesWithHours: 1, pricedKinds: 6, athletes: 4 }) // ["site_hours"]
 */
export function stillToSet(counts: AcademyCounts): SettingUp[] {
  const isMissing: Record<SettingUp, boolean> = {
    site_hours: counts.sitesWithHours < counts.sites,
    lanes: counts.lanes === 0,
    coaches: counts.coaches === 0,
    coach_hours: counts.coachesWithHours < counts.coaches,
    rates: counts.pricedKinds === 0,
    athletes: counts.athletes === 0,
  };
  return SETTING_UP.filter((step) => isMissing[step]);
}
