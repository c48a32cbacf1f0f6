const COMPLETE = "The words alone are a complete review.";

/** A length of speech as a clock shows it. @example spokenTime(7_400) // "0:07" */
export function spokenTime(lengthMs: number): string {
  const seconds = Math.max(0, Math.round(lengthMs / 1000));
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
}

/** How much may still be said, rounded up, so that a second that is still running is counted. @example timeLeft(59_100) // "0:01 left" */
export function timeLeft(spokenMs: number, mostMs = 60_000): string {
  return `${spokenTime(Math.ceil(Math.max(0, mostMs - spokenMs) / 1000) * 1000)} left`;
}

/** Why nothing can be recorded, in one sentence and the comfort that nothing depends on it; by the name of the browser's error. */
export function whyNotRecorded(errorName: string): string {
  if (errorName === "NotAllowedError" || errorName === "SecurityError")
    return `The browser was not allowed to use the microphone. ${COMPLETE}`;
  if (errorName === "NotFoundError" || errorName === "OverconstrainedError")
    return `No microphone was found. ${COMPLETE}`;
  if (errorName === "NotReadableError" || errorName === "AbortError")
    return `The microphone is in use by something else. ${COMPLETE}`;
  return `This browser cannot record here. ${COMPLETE}`;
}
