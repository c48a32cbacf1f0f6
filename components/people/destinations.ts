/** A page or a person one can go to. */
export interface Destination {
  href: string;
  label: string;
  /** What sets it apart from others of its name. */
  hint: string;
}

/** How many places are offered at a time. */
const OFFERED = 9;

/**
 * The pages whose name holds what was typed, then the athletes that were found for it. A blank text offers every page.
 * @example destinations([{ href: "/today", label: "Today" }], [], "tod")[0]?.href // "/today"
 */
export function destinations(
  pages: readonly { href: string; label: string }[],
  athletes: readonly { athleteId: string; name: string; coachName: string | null }[],
  text: string,
): Destination[] {
  const words = text.trim().toLowerCase();
  const fitting = pages
    .filter((page) => page.label.toLowerCase().includes(words))
    .map((page) => ({ ...page, hint: "page" }));
  const found =
    words === ""
      ? []
      : athletes.map(({ athleteId, name, coachName }) => ({
          href: `/athletes/${athleteId}`,
          label: name,
          hint: coachName ? `with ${coachName}` : "without a coach",
        }));
  return [...fitting, ...found].slice(0, OFFERED);
}
