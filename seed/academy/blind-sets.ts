import { type BlindFrame, drawBlindFrames } from "@/server/domain/mechanics/blind-draw";
import { blindPool, type SeenFrames } from "@/server/domain/mechanics/blind-pool";
import { JUDGEMENT_WORDS } from "@/server/domain/mechanics/judgement";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import type { Random } from "../seeded-random";
import { seenOn } from "./seen-frames";
import type { World } from "./world";

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;

type CoachKey = "tamar" | "ruben" | "ines";

/** How much more each coach sees than is there, in steps of a judgement. */
const HABITS: Readonly<Record<CoachKey, number>> = { tamar: 0, ruben: -0.2, ines: 0.5 };

/** How far one look strays from the next, in steps of a judgement. */
const STRAYS = 0.4;

/** What could not be seen, a share of looks at a judgement. */
const UNSEEN = 0.03;

interface SetPlan {
  name: string;
  checkpointIds: readonly string[];
  frames: number;
  /** How long ago it was drawn; closed four days later, or null while it is open. */
  drawnDaysAgo: number;
  isClosed: boolean;
  /** How many frames each coach has rated. */
  rated: Readonly<Partial<Record<CoachKey, number>>>;
}

const ALL = 40;

const PLANS: readonly SetPlan[] = [
  {
    ...{ name: "At front foot contact", frames: 12 },
    checkpointIds: ["front-knee-bent", "elbow-shoulder-height", "glove-controlled"],
    ...{ drawnDaysAgo: 6, isClosed: true, rated: { tamar: ALL, ruben: ALL, ines: ALL } },
  },
  {
    ...{ name: "Lift and finish", frames: 12 },
    checkpointIds: ["balanced-lift", "balanced-finish", "slow-first-move"],
    ...{ drawnDaysAgo: 1, isClosed: false, rated: { tamar: 6, ruben: ALL } },
  },
];

/** The blind sets of the coaches: what they saw alone on frames that were reviewed before. */
export function buildBlindSets(world: World): void {
  for (const plan of PLANS) buildSet(world, plan, world.random.fork(`blind set ${plan.name}`));
}

function buildSet(world: World, plan: SetPlan, random: Random): void {
  const madeAtMs = world.nowMs - plan.drawnDaysAgo * DAY_MS - 3 * HOUR_MS;
  const pool = poolOf(plan, seenOn(world, madeAtMs));
  const setId = world.id("bls");
  const closedAtMs = plan.isClosed ? madeAtMs + 4 * DAY_MS : null;
  const { priya } = world.staffIds;
  world.rows.blindSet.push({ id: setId, name: plan.name, madeByPersonId: priya, madeAtMs, closedAtMs });
  const facts = {
    way: "judge",
    view: "open_side",
    frames: Math.min(plan.frames, pool.length),
    of: pool.length,
  };
  note(world, { atMs: madeAtMs, action: "agreement.drawn", subjectId: setId, facts });
  if (closedAtMs !== null) {
    note(world, { atMs: closedAtMs, action: "agreement.closed", subjectId: setId, facts: {} });
  }
  for (const [position, { coachId: _coachId, ...frame }] of drawBlindFrames(
    pool,
    plan.frames,
    setId,
  ).entries()) {
    const itemId = world.id("bli");
    world.rows.blindItem.push({ ...frame, id: itemId, setId, position });
    for (const [coach, rated] of Object.entries(plan.rated) as [CoachKey, number][]) {
      if (position >= rated) continue;
      const ratedAtMs = madeAtMs + 2 * HOUR_MS + position * 50_000;
      const rating = { id: world.id("blr"), itemId, coachPersonId: world.staffIds[coach], ratedAtMs };
      world.rows.blindRating.push({ ...rating, ...saidOf(world, frame, coach, random) });
    }
  }
}

function poolOf({ checkpointIds }: SetPlan, seen: SeenFrames): BlindFrame[] {
  return checkpointIds.flatMap((id) => {
    const checkpoint = STARTING_LIBRARY.find((each) => each.id === id);
    if (!checkpoint) throw new RangeError(`There is no checkpoint ${id}.`);
    return blindPool("judge", checkpoint, seen).filter(({ view }) => view === "open_side");
  });
}

function note(world: World, act: Omit<World["acts"][number], "actorPersonId">): void {
  world.acts.push({ ...act, actorPersonId: world.staffIds.priya });
}

function saidOf(world: World, frame: Omit<BlindFrame, "coachId">, coach: CoachKey, random: Random) {
  if (random.chance(UNSEEN)) return { value: null, points: "[]" };
  const first = world.rows.judgement.find(
    ({ clipId, checkpointId }) => clipId === frame.clipId && checkpointId === frame.checkpointId,
  );
  const truth = first?.score ?? levelOf(world, frame);
  const seen = Math.round(truth + HABITS[coach] + bell(random) * STRAYS);
  return { value: Math.max(0, Math.min(JUDGEMENT_WORDS.length - 1, seen)), points: "[]" };
}

/** What is there to be seen where nobody has judged it: the same for every coach. */
function levelOf(
  world: World,
  { clipId, checkpointId }: Pick<BlindFrame, "clipId" | "checkpointId">,
): number {
  return world.random.fork(`level ${clipId} ${checkpointId}`).pick([0, 1, 1, 2, 2, 3]);
}

/** A number about 0, nearly normal with a spread of 1: the sum of twelve even ones, less six. */
function bell(random: Random): number {
  return Array.from({ length: 12 }, () => random.next()).reduce((sum, each) => sum + each, -6);
}
