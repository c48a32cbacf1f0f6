/** One observation of a series: when (days, milliseconds or any other unit, the same throughout) and what. */
export interface Observation {
  at: number;
  value: number;
}
