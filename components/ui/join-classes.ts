/** Class names in one string, leaving out what is empty or false. */
export function joinClasses(...names: readonly (string | false | null | undefined)[]): string {
  return names.filter(Boolean).join(" ");
}
