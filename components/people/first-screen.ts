/** What decides where a person begins. */
interface Beginner {
  roles: readonly string[];
  athleteId: string | null;
  guardianOf: readonly string[];
}

/** The first screen of a person: staff begin with the day, families with their athlete, others with their account. */
export function firstScreenOf(person: Beginner): string {
  if (person.roles.length > 0) return "/today";
  const athleteId = person.athleteId ?? person.guardianOf[0];
  return athleteId ? `/family/${athleteId}` : "/account";
}
