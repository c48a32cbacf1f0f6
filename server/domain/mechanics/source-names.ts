/** For what coaches commonly teach and no study was found to measure. */
export const COMMON_PRACTICE = "common practice";

/**
 * The five checkpoints that video and motion capture judged alike in 169 pitchers aged 9 to 18. The names of the five
 * are from memory; that there are five and that they agreed was read in the abstract.
 */
export const DAVIS_2009 = "Davis et al. 2009, Am J Sports Med 37:1484";

/** Means by age group: stride length, front knee and trunk tilt (Tables 2 and 3). */
export const KAGEYAMA_2015 = "Kageyama et al. 2015, J Sports Sci Med 14:246";

/** The Clinician's Guide to Baseball Pitching Biomechanics: positions at foot contact and at release. */
export const DIFFENDAFFER_2023 = "Diffendaffer et al. 2023, Sports Health";
