/** Where the camera stands. The open side is the side the chest faces in the set position. */
export const CLIP_VIEWS = ["open_side", "closed_side", "front", "back"] as const;
export type ClipView = (typeof CLIP_VIEWS)[number];

/** The faults a clip can show, each with a severity from 0 (absent) to 1 (as bad as it gets). */
export const CLIP_FAULTS = [
  "open_front_side",
  "collapsing_front_knee",
  "dropping_glove",
  "finish_not_held",
  "short_stride",
  "head_drift",
] as const;
export type ClipFault = (typeof CLIP_FAULTS)[number];

/** The light in the lane, named as the house names its colours. */
export const CLIP_LIGHTS = ["chalk", "clay", "grass", "dusk", "ink"] as const;
export type ClipLight = (typeof CLIP_LIGHTS)[number];

/** All that decides a clip: the same parameters give the same truth and the same pictures. */
export type ClipParameters = {
  readonly view: ClipView;
  readonly throws: "R" | "L";
  /** Age in years, 8 to 20: decides proportions, ball speed and the distance to the plate. */
  readonly ageYears: number;
  /** Body height in metres; left out, the median boy's of that age. */
  readonly heightM?: number;
  readonly faults: Partial<Record<ClipFault, number>>;
  readonly fps: number;
  /** Even numbers of pixels; either way up. */
  readonly widthPx: number;
  readonly heightPx: number;
  readonly light: ClipLight;
  /** Which of the invented kits is worn, counted from 0; larger numbers go round again. */
  readonly kit: number;
};

const DEFAULTS: ClipParameters = {
  view: "open_side",
  throws: "R",
  ageYears: 15,
  faults: {},
  fps: 60,
  widthPx: 640,
  heightPx: 360,
  light: "chalk",
  kit: 0,
};

/**
 * Parameters made whole and checked.
 * @throws RangeError naming the parameter that is out of range (the caller's fault)
 * @example clipParameters({ throws: "L" }).view // "open_side"
 */
export function clipParameters(chosen: Partial<ClipParameters> = {}): ClipParameters {
  const whole = { ...DEFAULTS, ...chosen };
  inRange("ageYears", whole.ageYears, 8, 20);
  inRange("fps", whole.fps, 24, 240);
  inRange("kit", whole.kit, 0, 10_000);
  if (whole.heightM !== undefined) inRange("heightM", whole.heightM, 1, 2.2);
  for (const name of ["widthPx", "heightPx"] as const) {
    inRange(name, whole[name], 32, 4096);
    if (whole[name] % 2 !== 0) throw new RangeError(`${name} must be even`);
  }
  for (const fault of CLIP_FAULTS) inRange(fault, severityOf(whole, fault), 0, 1);
  return whole;
}

/** How strongly a fault shows, 0 when it is not named. */
export function severityOf(parameters: ClipParameters, fault: ClipFault): number {
  return parameters.faults[fault] ?? 0;
}

function inRange(name: string, value: number, from: number, to: number): void {
  if (!(value >= from && value <= to))
    throw new RangeError(`${name} must be from ${from} to ${to}, not ${value}`);
}
