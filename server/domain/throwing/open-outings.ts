import { countsTowardLimit, currentEntries, type PlannedThrows, type ThrowEntry } from "./throw-entry";

/**
 * The planned outings that the log does not hold yet: a day with a game, live at-bats or a showcase on the log has had
 * its outing, so the plan for it no longer counts. One that is past and was never logged stays, and counts as thrown.
 */
export function openOutings(
  outings: readonly PlannedThrows[],
  entries: readonly ThrowEntry[],
): PlannedThrows[] {
  const played = new Set(
    currentEntries(entries)
      .filter((entry) => countsTowardLimit(entry.kind, { countedKinds: [] }))
      .map((entry) => entry.thrownOn),
  );
  return outings.filter((outing) => !played.has(outing.plannedOn));
}
