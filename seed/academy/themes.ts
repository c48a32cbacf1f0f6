import { type Checkpoint, canBeJudgedFrom } from "@/server/domain/mechanics/checkpoint";
import type { CameraView } from "@/server/domain/mechanics/delivery";
import type { JudgementScore } from "@/server/domain/mechanics/judgement";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import {
  type CorrectionEvent,
  type CorrectionStanding,
  isOpen,
} from "@/server/domain/reviews/correction-state";
import type { ClipFault } from "../clips/clip-parameters";
import type { Random } from "../seeded-random";
import type { World } from "./world";

/** A correction while the season is being told; the row is brought up to date with each event. */
export interface TrackedCorrection {
  row: World["rows"]["correction"][number];
  standing: CorrectionStanding;
  events: CorrectionEvent[];
}

/** One thing about an athlete's delivery: how well it shows by now, and the correction on it, if any. */
export interface Theme {
  checkpoint: Checkpoint;
  /** From 0 to 3, like a judgement, but between its steps as well. */
  level: number;
  /** Stays about as it is, whatever is practised. */
  isStubborn: boolean;
  correction: TrackedCorrection | null;
}

/** The checkpoints that a drawn clip can show the lack of. */
export const FAULT_OF: Readonly<Record<string, ClipFault>> = {
  "front-shoulder-closed": "open_front_side",
  "front-knee-firms": "collapsing_front_knee",
  "glove-controlled": "dropping_glove",
  "balanced-finish": "finish_not_held",
  "stride-length": "short_stride",
  "head-steady": "head_drift",
};

/** At this level or below a drawn clip shows the fault plainly. */
const FAULT_SHOWS_LEVEL = 1.4;

const FAULTS_SHOWN = 2;

const THEMES_DRAWN = 3;
const THEMES_BESIDE = 4;
const THEMES_BESIDE_FOR_YEARS = 6;

/** Of what is looked at for years, one in so many does not take. */
const STUBBORN_EVERY = 4;

/** What practice does to what is stubborn, as a share of what it does to all else. */
const STUBBORN_SHARE = 0.05;

/**
 * What is looked at on this athlete's clips, from the view they are mostly filmed from; of who is filmed for years all
 * that a drawn clip can show, long before it is corrected.
 */
export function chooseThemes(view: CameraView, isForYears: boolean, random: Random): Theme[] {
  const seen = STARTING_LIBRARY.filter((checkpoint) => canBeJudgedFrom(checkpoint, view));
  const shown = random.shuffled(seen.filter(({ id }) => id in FAULT_OF));
  const drawn = isForYears ? shown : shown.slice(0, THEMES_DRAWN);
  const most = isForYears ? THEMES_BESIDE_FOR_YEARS : THEMES_BESIDE;
  const beside = random.shuffled(seen.filter(({ id }) => !(id in FAULT_OF))).slice(0, most);
  const themes = [
    ...drawn.map((checkpoint) => themeOf(checkpoint, random.between(0.2, 1.4))),
    ...beside.map((checkpoint, index) => themeOf(checkpoint, index === 0 ? 2.8 : random.between(0.6, 2.2))),
  ];
  if (!isForYears) return themes;
  return themes.map((theme, index) => ({ ...theme, isStubborn: (index + 1) % STUBBORN_EVERY === 0 }));
}

/**
 * One more thing that can be seen from the view and has not been looked at yet, or null when everything has.
 * @param isDrawn whether the lack of it is to show on a drawn clip
 */
export function freshTheme(
  themes: readonly Theme[],
  view: CameraView,
  isDrawn: boolean,
  random: Random,
): Theme | null {
  const known = themes.map(({ checkpoint }) => checkpoint.id);
  const others = STARTING_LIBRARY.filter(
    (checkpoint) =>
      canBeJudgedFrom(checkpoint, view) &&
      !known.includes(checkpoint.id) &&
      checkpoint.id in FAULT_OF === isDrawn,
  );
  return others.length > 0 ? themeOf(random.pick(others), random.between(0.4, 1.3)) : null;
}

const themeOf = (checkpoint: Checkpoint, level: number): Theme => {
  return { checkpoint, level, isStubborn: false, correction: null };
};

/**
 * Sees to it that a clip to be drawn has something to show: two faults at least that are there to be corrected. What is
 * new comes first; else something that had been learnt has slipped.
 */
export function findSomethingToDraw(themes: Theme[], view: CameraView, random: Random): void {
  const drawn = themes.filter(({ checkpoint }) => checkpoint.id in FAULT_OF);
  const toCorrect = drawn.filter(({ level, correction }) => {
    return level <= FAULT_SHOWS_LEVEL && (correction === null || isOpen(correction.standing.state));
  });
  for (let missing = FAULTS_SHOWN - toCorrect.length; missing > 0; missing -= 1) {
    const fresh = freshTheme(themes, view, true, random);
    const slipped = drawn.find(({ level }) => level > FAULT_SHOWS_LEVEL);
    if (fresh) themes.push(fresh);
    else if (slipped) slipped.level = random.between(0.7, FAULT_SHOWS_LEVEL);
  }
}

/** Moves a level, kept within 0 and 3. */
export function shift(theme: Theme, by: number): void {
  const done = theme.isStubborn ? by * STUBBORN_SHARE : by;
  theme.level = Math.min(3, Math.max(0, theme.level + done));
}

/** The judgement a coach comes to: the level, not always seen quite alike. */
export function scoreOf({ level }: Theme, random: Random): JudgementScore {
  const seen = Math.round(level + random.between(-0.3, 0.3));
  return Math.min(3, Math.max(0, seen)) as JudgementScore;
}

/** How strongly each fault shows on a drawn clip at the levels reached; two decimals, faults hardly there left out. */
export function faultsOf(themes: readonly Theme[]): Partial<Record<ClipFault, number>> {
  const pairs = themes.flatMap(({ checkpoint, level }) => {
    const fault = FAULT_OF[checkpoint.id];
    const severity = Math.round((1 - level / 3) * 100) / 100;
    return fault && severity > 0.04 ? [[fault, severity] as const] : [];
  });
  return Object.fromEntries(pairs);
}
