import { WHO } from "./academy";

interface Owners {
  coach: string;
  lane: string;
  guardian: string | null;
}

const OWNERS: Record<string, Owners> = {
  [WHO.child.athleteId]: { coach: WHO.coach, lane: WHO.moundLane, guardian: WHO.guardian },
  [WHO.teen.athleteId]: { coach: WHO.coach, lane: WHO.moundLane, guardian: WHO.guardian },
  [WHO.adult.athleteId]: { coach: WHO.coach, lane: WHO.moundLane, guardian: null },
  [WHO.stranger.athleteId]: { coach: WHO.otherCoach, lane: WHO.secondMoundLane, guardian: WHO.otherGuardian },
};

/** Who looks after an athlete of the test academy, and where. */
export function ownersOf(athleteId: string): Owners {
  const owners = OWNERS[athleteId];
  if (!owners) throw new Error(`Nobody looks after ${athleteId}.`);
  return owners;
}
