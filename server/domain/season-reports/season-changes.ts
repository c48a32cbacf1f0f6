import type { AthleteEvidence } from "@/server/domain/mechanics/athlete-evidence";
import type { ChangeOutcome } from "@/server/domain/mechanics/change";
import { changeInWords } from "@/server/domain/mechanics/change-in-words";
import { CAMERA_VIEW_WORDS } from "@/server/domain/mechanics/delivery";
import type { AmongMany } from "@/server/domain/mechanics/many-checkpoints";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import type { Series } from "@/server/domain/mechanics/observation";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";

/** What may be said of the changes of a season. */
export interface SeasonChanges {
  /** How many were compared, and how many had too few observations for it. */
  lookedAt: number;
  tooFew: number;
  /** Of how many a change is told, and that looking at many was allowed for. */
  words: string[];
  /** Those beyond measurement error: the fixed words first, then the figures. */
  told: NamedChange[];
  /** Those of which no change can be told from error. */
  same: NamedChange[];
}

/** One change by its checkpoint, what was looked at since when, and the words for it. */
export interface NamedChange {
  id: string;
  checkpointName: string;
  seen: string;
  words: string[];
}

/** A correction as a report calls it. */
export interface NamedCorrection {
  id: string;
  checkpointName: string;
  givenOn: CalendarDay;
}

/**
 * Changes since the corrections of a season, each named by its checkpoint, what was looked at and the day it was given.
 * @param evidence of the corrections that were worked on in the season
 * @example "Firm front leg", "Judged from the open side, since Sat 10 Jan 2026": "Improved beyond measurement error."
 */
export function seasonChanges(
  { series, many }: AthleteEvidence,
  corrections: readonly NamedCorrection[],
): SeasonChanges {
  const byId = new Map(corrections.map((each) => [each.id, each]));
  const all = series.flatMap(({ series: seen, since }) =>
    since.flatMap(({ correctionId, among }) => {
      const correction = byId.get(correctionId);
      return correction ? [namedChange(seen, correction, among)] : [];
    }),
  );
  const compared = all.filter(({ outcome }) => outcome !== null);
  const plain = ({ outcome: _, ...change }: (typeof all)[number]): NamedChange => change;
  return {
    ...{ lookedAt: many.lookedAt, tooFew: many.tooFew },
    words: many.lookedAt === 0 ? tooFewInWords(many.tooFew) : many.words,
    told: compared.filter(({ outcome }) => outcome !== "no_change").map(plain),
    same: compared.filter(({ outcome }) => outcome === "no_change").map(plain),
  };
}

/** Null for what could not be compared. */
type Compared = NamedChange & { outcome: ChangeOutcome | null };

function namedChange(series: Series, correction: NamedCorrection, { id, since }: AmongMany): Compared {
  const { kind, view, unseen } = series;
  const what = kind === "judgement" ? "Judged" : MEASURES[kind].words;
  const from = view === null ? "in person" : `from the ${CAMERA_VIEW_WORDS[view].toLowerCase()}`;
  return {
    ...{ id, checkpointName: correction.checkpointName },
    seen: `${what} ${from}, since ${dayInWords(correction.givenOn, { withYear: true })}`,
    words: changeInWords(kind, since, unseen),
    outcome: since.kind === "change" ? since.outcome : null,
  };
}

/** Where nothing could be compared. */
function tooFewInWords(tooFew: number): string[] {
  if (tooFew === 0) return ["Nothing was looked at often enough to compare."];
  const those =
    tooFew === 1 ? "The one that was looked at has" : `The ${tooFew} that were looked at each have`;
  return [`No change can be told yet. ${those} too few observations before or since the correction.`];
}
