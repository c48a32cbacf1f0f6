/** What decides where a person begins. */
interface Beginner {
  roles: readonly string[];
  /** The athletes whose family screens they may open, in order. */
  athletes: readonly { athleteId: string }[];
}

/** The first screen of a person: staff begin with the day, families with their athlete, others with their account. */
export function firstScreenOf(person: Beginner): string {
  return person.roles.length > 0 ? "/today" : firstFamilyScreenOf(person);
}

/** Where the family screens of a person begin; their account when there is no athlete they may open. */
export function firstFamilyScreenOf(person: Pick<Beginner, "athletes">): string {
  const [first] = person.athletes;
  return first ? `/family/${first.athleteId}` : "/account";
}
