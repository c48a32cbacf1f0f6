import { textOf } from "@/components/wire/form-values";
import {
  type StatedDirection,
  WANTED_WAYS,
  type WantedWay,
} from "@/server/domain/mechanics/wanted-direction";

/** The ways as they are chosen. */
export const WAY_CHOICES: Readonly<Record<WantedWay, string>> = {
  more: "More of it",
  less: "Less of it",
  nearer: "Nearer to a value",
};

/** Which way a measure is better, as a form says it; null when it says none, "no value" for nearer to nothing. */
export function directionOf(data: FormData): StatedDirection | "no value" | null {
  const way = WANTED_WAYS.find((each) => each === textOf(data, "wanted"));
  if (way === undefined) return null;
  if (way !== "nearer") return { kind: way };
  const to = textOf(data, "wantedTo");
  return to === "" ? "no value" : { kind: "nearer", to: Number(to) };
}
