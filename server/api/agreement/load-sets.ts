import {
  blindItems,
  findBlindSet,
  listBlindSets,
  ratedCounts,
  ratingsOfClosed,
} from "@/server/data/blind-sets";
import { listCheckpoints } from "@/server/data/checkpoints";
import { NAMELESS, namesOf } from "@/server/data/names";
import { coachesNow } from "@/server/data/round-queue";
import { Refusal } from "@/server/domain/errors/refusal";
import { blindResults, type KindResults } from "@/server/domain/mechanics/blind-results";
import { fullName } from "@/server/domain/people/person";
import type { Scope } from "../context";
import type { KindView, SetsView, SetView } from "./shapes";

type Reading = Pick<Scope, "db" | "actor">;
type Item = Awaited<ReturnType<typeof blindItems>>[number];

/** The sets there are, with how far coaches are and nothing of what they said. */
export async function loadSets({ db, actor }: Reading): Promise<SetsView> {
  const sets = await listBlindSets(db);
  const counts = await ratedCounts(db);
  return {
    ...rolesOf(actor),
    sets: sets.map(({ isJudged, ...set }) => {
      const own = counts.filter(({ setId }) => setId === set.id);
      return {
        ...set,
        way: isJudged ? "judge" : "measure",
        finished: own.filter(({ rated }) => rated >= set.items).length,
        begun: own.length,
        rated: own.find(({ coachId }) => coachId === actor.personId)?.rated ?? 0,
      };
    }),
  };
}

/** One set. What was said is read of a closed one alone. */
export async function loadSet({ db, actor }: Reading, setId: string): Promise<SetView> {
  const set = await findBlindSet(db, setId);
  if (!set) throw new Refusal({ reason: "not_found" });
  const items = await blindItems(db, setId);
  const counts = await ratedCounts(db, setId);
  const coaches = await coachesNow(db);
  const people = [
    ...new Set([...coaches.map(({ personId }) => personId), ...counts.map((row) => row.coachId)]),
  ];
  const names = await namesOf(db, [...people, set.madeByPersonId]);
  const nameOf = (personId: string) => fullName(names.get(personId) ?? NAMELESS);
  const asked = new Set(items.map(({ checkpointId }) => checkpointId));
  const { id, name, madeAtMs, closedAtMs, madeByPersonId } = set;
  return {
    ...{ id, name, madeAtMs, closedAtMs, items: items.length, madeByName: nameOf(madeByPersonId) },
    way: items.some(({ kind }) => kind === "judgement") ? "judge" : "measure",
    ...rolesOf(actor),
    progress: people.map((personId) => ({
      ...{ personId, name: nameOf(personId) },
      rated: counts.find(({ coachId }) => coachId === personId)?.rated ?? 0,
    })),
    checkpoints: (await listCheckpoints(db)).flatMap((each) =>
      asked.has(each.id) ? [{ id: each.id, name: each.name }] : [],
    ),
    results: closedAtMs === null ? null : await resultsOf(db, setId, items),
  };
}

async function resultsOf(
  db: Scope["db"],
  setId: string,
  items: readonly Item[],
): Promise<SetView["results"]> {
  const asked = items.map(({ id, checkpointId, kind }) => ({ itemId: id, checkpointId, kind }));
  const { kinds, uncounted } = blindResults(asked, await ratingsOfClosed(db, setId));
  return { kinds: kinds.map((kind) => asView(kind, items)), uncounted };
}

function asView(
  { measures, judgements, itemsApart, ...kind }: KindResults,
  items: readonly Item[],
): KindView {
  return {
    ...kind,
    measures: measures === null ? null : withoutDifferences(measures),
    pairs: judgements?.pairs ?? null,
    itemsApart: itemsApart.flatMap((apart) => {
      const item = items.find(({ id }) => id === apart.itemId);
      if (!item) return [];
      const { position, frame, view, clipId, roundId, state } = item;
      const isThere = roundId !== null && (state === "ready" || state === "drawing");
      return [{ ...apart, position, frame, view, at: isThere ? { roundId, clipId } : null }];
    }),
  };
}

function withoutDifferences({ differences: _differences, ...figure }: NonNullable<KindResults["measures"]>) {
  return figure;
}

function rolesOf({ roles }: Scope["actor"]) {
  return { isAdmin: roles.includes("admin"), isCoach: roles.includes("coach") };
}
