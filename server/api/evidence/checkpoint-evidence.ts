import { namesOf } from "@/server/data/names";
import { type ClipPlace, clipPlaces } from "@/server/data/observations";
import { type PlayableClip, playableClipsBy } from "@/server/data/round-clips";
import { Refusal } from "@/server/domain/errors/refusal";
import type { SeriesEvidence } from "@/server/domain/mechanics/athlete-evidence";
import { changeInWords } from "@/server/domain/mechanics/change-in-words";
import type { Checkpoint } from "@/server/domain/mechanics/checkpoint";
import type { Observation, Series } from "@/server/domain/mechanics/observation";
import { publishedInWords, publishedRanges } from "@/server/domain/mechanics/published-ranges";
import { fullName } from "@/server/domain/people/person";
import { correctionSpans } from "@/server/domain/reviews/correction-spans";
import { dayOf } from "@/server/domain/time/calendar-day";
import { headOf } from "../athlete-head";
import type { Scope } from "../context";
import type { CheckpointEvidence } from "./checkpoint-shape";
import { seriesErrorInWords, seriesValueInWords, wantedInWords } from "./evidence-words";
import { loadEvidence } from "./load-evidence";

type SeriesView = CheckpointEvidence["series"][number];

/** What the words and places of a series are made of. */
interface Known {
  checkpoint: Checkpoint;
  places: ReadonlyMap<string, ClipPlace>;
  clips: ReadonlyMap<string, PlayableClip>;
  coachNames: ReadonlyMap<string, string>;
}

/** One checkpoint of the athlete in hand. @throws Refusal `not_found` when the academy has no such checkpoint */
export async function checkpointFor(scope: Scope, checkpointId: string): Promise<CheckpointEvidence> {
  const { db, athlete } = scope;
  const { series, many, corrections, checkpoints } = await loadEvidence(scope);
  const checkpoint = checkpoints.find(({ id }) => id === checkpointId);
  if (checkpoint === undefined) throw new Refusal({ reason: "not_found" });
  const own = series
    .filter((each) => each.series.checkpointId === checkpointId)
    .sort((a, b) => b.series.days.length - a.series.days.length);
  const places = await clipPlaces(db, athlete.athleteId);
  const known: Known = {
    ...{ checkpoint, places },
    clips: await clipsOf(scope, own, places),
    coachNames: await coachNames(scope, own),
  };
  const { id, name, phase, event, absentLooksLike, clearLooksLike } = checkpoint;
  return {
    athlete: await headOf(scope),
    today: scope.today,
    checkpoint: { id, name, phase, event, absentLooksLike, clearLooksLike },
    corrections: corrections
      .filter((each) => each.checkpointId === checkpointId)
      .map(({ standing, ...each }) => ({
        ...{ id: each.id, roundId: each.roundId, cue: each.cue },
        ...{ state: standing.state, cameBack: standing.cameBack },
        givenOn: dayOf(each.givenAtMs, athlete.zone),
        spans: correctionSpans(standing.history, athlete.zone),
      })),
    series: own.map((each) => seriesView(each, known)),
    manyWords: many.words,
  };
}

function seriesView(evidence: SeriesEvidence, known: Known): SeriesView {
  const { series, error, trend, shift, since } = evidence;
  const { kind, view, days, observations, unseen } = series;
  return {
    ...{ kind, view, unseen },
    days: days.map((each) => ({
      ...each,
      words: seriesValueInWords(kind, each.value),
      place: placeOfDay(series, each.day, known.places),
    })),
    observations: observations.map((each) => observationView(each, known)),
    plusMinus: error?.figure.isEnough ? error.figure.plusMinus : null,
    errorWords: seriesErrorInWords(evidence),
    wantedWords: wantedInWords(evidence),
    ...{ trendWords: trend.words, shiftWords: shift.words },
    since: since.map(({ correctionId, among }) => ({
      ...{ correctionId, fellAway: among.fellAway },
      words: changeInWords(kind, among.since, unseen),
    })),
    published: publishedOf(series, known.checkpoint),
    frames: framesToLookAt(series, known),
  };
}

function observationView(
  each: Observation,
  { places, coachNames }: Known,
): SeriesView["observations"][number] {
  const { id, day, kind, pitchType, repeatOfId, coachId } = each;
  const value = each.value ?? 0;
  return {
    ...{ id, day, value, pitchType, words: seriesValueInWords(kind, value) },
    coachName: coachNames.get(coachId) ?? "",
    isRepeat: repeatOfId !== null,
    place: placeOf(each, places),
  };
}

function placeOf({ clipId, frame }: Observation, places: Known["places"]) {
  const clip = clipId === null ? undefined : places.get(clipId);
  if (clip === undefined || clipId === null) return null;
  return { roundId: clip.roundId, clipId, frame, isKept: clip.isKept };
}

/* The day's first frame whose film is there, else its first. */
function placeOfDay({ observations }: Series, day: string, places: Known["places"]) {
  const all = observations.filter((each) => each.day === day).flatMap((each) => placeOf(each, places) ?? []);
  return all.find(({ isKept }) => isKept) ?? all[0] ?? null;
}

function publishedOf({ kind }: Series, { event }: Checkpoint): SeriesView["published"] {
  if (kind === "judgement") return [];
  return publishedRanges(kind, event).map((range) => ({
    ...{ words: publishedInWords(kind, range), mean: range.mean, sd: range.sd },
  }));
}

/* First, middle and latest of those whose film is there, each clip once. */
function lookable({ observations }: Series, places: Known["places"]): (Observation & { frame: number })[] {
  const kept = observations.flatMap((each) =>
    each.frame !== null && each.repeatOfId === null && placeOf(each, places)?.isKept
      ? [{ ...each, frame: each.frame }]
      : [],
  );
  const once = kept.filter((each, at) => kept.findIndex(({ clipId }) => clipId === each.clipId) === at);
  const chosen = [once[0], once[Math.floor((once.length - 1) / 2)], once.at(-1)];
  return [...new Set(chosen)].flatMap((each) => each ?? []);
}

const WHICH = { 1: ["latest"], 2: ["first", "latest"], 3: ["first", "middle", "latest"] } as const;

function framesToLookAt(series: Series, { places, clips }: Known): SeriesView["frames"] {
  const chosen = lookable(series, places);
  const which: readonly SeriesView["frames"][number]["which"][] = WHICH[chosen.length as 1 | 2 | 3] ?? [];
  return chosen.flatMap((each, at) => {
    const clip = clips.get(each.clipId ?? "");
    const word = which[at];
    if (clip === undefined || word === undefined) return [];
    const { day, frame, kind, value } = each;
    const words = seriesValueInWords(kind, value ?? 0);
    return [{ which: word, day, frame, words, roundId: clip.roundId, clip }];
  });
}

async function clipsOf({ db }: Scope, own: readonly SeriesEvidence[], places: Known["places"]) {
  const ids = own.flatMap(({ series }) => lookable(series, places).flatMap(({ clipId }) => clipId ?? []));
  const clips = await playableClipsBy(db, [...new Set(ids)]);
  return new Map(clips.map((each) => [each.id, each]));
}

async function coachNames({ db }: Scope, own: readonly SeriesEvidence[]) {
  const ids = own.flatMap(({ series }) => series.observations.map(({ coachId }) => coachId));
  const names = await namesOf(db, [...new Set(ids)]);
  return new Map([...names].map(([id, name]) => [id, fullName(name)]));
}
