import { pathToFileURL } from "node:url";
import { placeRows } from "@/components/charts/time-line-layout";
import type { SeasonAnswer } from "@/components/season/season-answer";
import { seasonLinks } from "@/components/season/season-answer";
import { seasonDrawing } from "@/components/season/season-items";
import { seededRandom } from "@/seed/seeded-random";
import { athleteEvidence } from "@/server/domain/mechanics/athlete-evidence";
import { checkpointChanges } from "@/server/domain/mechanics/checkpoint-changes";
import { DELIVERY_PHASES } from "@/server/domain/mechanics/delivery";
import type { Observation } from "@/server/domain/mechanics/observation";
import { errorsOfSeries } from "@/server/domain/mechanics/series-error";
import { addDays } from "@/server/domain/time/calendar-day";
import { type Figure, slowest } from "./measure";

const FIRST_DAY = "2023-12-04";
const ROUNDS = 60;
const OBSERVATIONS = 1500;
const CORRECTIONS = 25;
const CHECKPOINTS = 20;
const SESSIONS = 150;
const OUTINGS = 60;
const WEEKS = 156;

/** Working out what a season line shows, of three seasons: what changed since each correction, and where all stands. */
export async function measureSeason(): Promise<Figure> {
  const { observations, season } = threeSeasons();
  const repeats = Array.from({ length: 60 }, (_, at) => ({
    ...{
      checkpointId: `checkpoint ${at % CHECKPOINTS}`,
      kind: "judgement" as const,
      view: "open_side" as const,
    },
    values: [1, 2, (at % 3) + 1],
  }));
  return slowest(
    `season line of three seasons (${ROUNDS} rounds, ${observations.length} observations): computation`,
    10,
    40,
    () => {
      const evidence = athleteEvidence({
        observations,
        corrections: season.corrections.map(({ id, checkpointId, givenOn }) => ({
          ...{ id, checkpointId, givenOn, seenOn: givenOn, wanted: null },
        })),
        wantedOf: () => null,
        errorOf: errorsOfSeries(repeats),
      });
      const { rows, items, axis } = seasonDrawing(season, seasonLinks("staff", "ath"));
      const placed = placeRows(rows, items, { axis, today: season.today, widthPx: 960 });
      if (checkpointChanges(evidence).length === 0 || placed.length === 0)
        throw new Error("Nothing was told.");
    },
  );
}

function threeSeasons(): { observations: Observation[]; season: SeasonAnswer } {
  const random = seededRandom("three seasons");
  const dayOf = (share: number) => addDays(FIRST_DAY, Math.round(share * WEEKS * 7));
  const observations = Array.from({ length: OBSERVATIONS }, (_, at): Observation => {
    const round = Math.floor((at * ROUNDS) / OBSERVATIONS);
    return {
      ...{ id: `${at}`, checkpointId: `checkpoint ${at % CHECKPOINTS}`, kind: "judgement" },
      ...{ value: random.int(0, 3), day: dayOf(round / ROUNDS), clipId: `clip ${round}`, frame: at % 90 },
      ...{ view: "open_side", coachId: "coach", pitchType: null, repeatOfId: null },
    };
  });
  const corrections = Array.from({ length: CORRECTIONS }, (_, at) => {
    const [given, showing, held] = [0, 0.03, 0.06].map((later) =>
      dayOf(Math.min(1, at / CORRECTIONS + later)),
    );
    return {
      ...{
        id: `cor ${at}`,
        roundId: "round",
        clipId: "clip",
        frame: 1,
        checkpointId: `checkpoint ${at % CHECKPOINTS}`,
      },
      ...{
        checkpointName: "A checkpoint with a name",
        phase: DELIVERY_PHASES[at % 6] ?? ("stride" as const),
      },
      ...{ cue: "", state: "held" as const, cameBack: false, givenOn: given ?? FIRST_DAY },
      spans: [
        { state: "given" as const, fromDay: given ?? FIRST_DAY, toDay: showing ?? null },
        { state: "showing" as const, fromDay: showing ?? FIRST_DAY, toDay: held ?? null },
        { state: "held" as const, fromDay: held ?? FIRST_DAY, toDay: null },
      ],
    };
  });
  return { observations, season: { ...EMPTY, corrections, ...things(dayOf) } };
}

function things(dayOf: (share: number) => string) {
  const many = <Thing>(count: number, thing: (day: string, id: string) => Thing) =>
    Array.from({ length: count }, (_, at) => thing(dayOf(at / count), `${at}`));
  return {
    rounds: many(ROUNDS, (receivedOn, id) => ({
      ...{ id: `round ${id}`, state: "settled" as const, receivedOn, endedOn: addDays(receivedOn, 12) },
    })),
    sessions: many(SESSIONS, (heldOn, id) => ({
      ...{
        id: `session ${id}`,
        kind: "lesson" as const,
        state: "logged" as const,
        attendance: "came" as const,
      },
      ...{ effort: 4, strikes: 14, topSpeed: 66, speedUnit: "mph" as const, heldOn, coachName: "" },
    })),
    games: many(OUTINGS, (thrownOn, id) => ({
      id: `game ${id}`,
      thrownOn,
      kind: "game" as const,
      pitches: 50,
    })),
    weeks: many(WEEKS, (weekOf) => ({ weekOf, counts: { games: 40, bullpens: 20, lessons: 30, other: 60 } })),
  };
}

const EMPTY: SeasonAnswer = {
  athlete: {
    ...{ athleteId: "ath", givenName: "An", name: "An Arm", ageYears: 15, throws: "right" },
    ...{ siteName: "Site", coachName: null },
  },
  ...{ today: "2026-11-25", sinceDay: "2025-11-25", maxOpenCorrections: 5, hasConsent: true },
  arm: { words: "", why: [], marks: [] },
  pain: { stop: null, mayClear: false, clearedBy: "guardian", reports: [], clearances: [] },
  ...{ rounds: [], corrections: [], judged: [], sessions: [], games: [], outings: [], weeks: [] },
  changes: { words: [], all: [] },
};

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  console.log(await measureSeason());
}
