/**
 * A name as short as it can stand beside others: the given name and the family name's first letter.
 * @example shortName({ givenName: "Theo", familyName: "Hallowell" }) // "Theo H."
 */
export function shortName(person: { givenName: string; familyName: string }): string {
  const [initial] = person.familyName.trim();
  return initial ? `${person.givenName} ${initial.toUpperCase()}.`.trim() : person.givenName || "Name erased";
}
