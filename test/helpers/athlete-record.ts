/** Everything there is of one athlete, by id; a text only this athlete's rows hold is in `marker`. */
export interface AthleteRecord {
  athleteId: string;
  personId: string;
  marker: string;
  rounds: Record<"received" | "taken" | "sent" | "answered" | "settled" | "retake", string>;
  /** A clip of each round, and one uploaded but not yet sent. */
  clips: Record<"received" | "taken" | "sent" | "answered" | "settled" | "retake" | "waiting", string>;
  reviews: { sent: string; answered: string; settled: string };
  correction: string;
  answeredCorrection: string;
  /** A measure of the sent review, and a request to take it again. */
  measurement: string;
  remeasureRequest: string;
  /** An open blind set of one frame of the sent review's clip, to be judged. */
  blindSet: string;
  blindItem: string;
  bookedSession: string;
  loggedSession: string;
  runningSession: string;
  throwEntry: string;
  outing: string;
  team: string;
  /** A link to a report of theirs that is open. */
  reportLink: string;
}
