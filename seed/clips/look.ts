import { type Body, bodyOf } from "./body";
import type { ClipParameters } from "./clip-parameters";
import { type KitColours, kitColours, type LightColours, lightColours } from "./palette";

/** What a pitcher is drawn with: the build, what is worn, the light that falls on it. */
export type Look = { readonly kit: KitColours; readonly light: LightColours; readonly body: Body };

/** The look of the pitcher of a clip. */
export function lookOf(parameters: ClipParameters): Look {
  return {
    kit: kitColours(parameters),
    light: lightColours(parameters.light),
    body: bodyOf(parameters.ageYears, parameters.heightM),
  };
}
