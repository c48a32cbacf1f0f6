import { canBeJudgedFrom, inDeliveryOrder } from "@/server/domain/mechanics/checkpoint";
import { DELIVERY_EVENTS, isApproximate } from "@/server/domain/mechanics/delivery";
import type { JudgementScore } from "@/server/domain/mechanics/judgement";
import { MAX_OPEN_CORRECTIONS } from "@/server/domain/reviews/correction-state";
import type { Random } from "../seeded-random";
import type { SeenClip } from "./clip-rows";
import { giveCorrection, openThemes } from "./correction-rows";
import { drawMark } from "./mark-rows";
import { writeMeasures } from "./measure-rows";
import { writeCharge } from "./price-list";
import { type Athlete, isForYears } from "./roster";
import { dayIn } from "./round-plan";
import type { Judged, Sending } from "./sending";
import { freshTheme, scoreOf, type Theme } from "./themes";
import { keepRemark, type World } from "./world";

/** The rounds whose clips are still there show more than one new correction: three weeks. */
const LATELY_MS = 21 * 86_400_000;

/** An athlete whose latest round is told has room left for what it finds. */
const MOST_BEFORE_LATEST = 3;

/** Writes the review itself with its event marks and judgements, and gives back what was judged. */
export function writeReview(
  world: World,
  sending: Sending,
  themes: readonly Theme[],
  random: Random,
): { reviewId: string; judged: Judged[] } {
  const { athlete, roundId, kind, clips, openedAtMs, sentAtMs, note } = sending;
  const reviewId = world.id("rev");
  world.rows.review.push({
    ...{ id: reviewId, roundId, athleteId: athlete.id, kind, coachPersonId: athlete.coachId },
    ...{ remarkId: note ? keepRemark(world, note) : null, openedAtMs, sentAtMs },
  });
  for (const clip of clips) markEvents(world, reviewId, clip, random);
  const judged = themes.flatMap((theme): Judged[] => {
    const clip = clips.find(({ view }) => canBeJudgedFrom(theme.checkpoint, view));
    return clip ? [{ theme, clip, score: scoreOf(theme, random) }] : [];
  });
  const all = [...judged, ...otherDeliveries(clips, judged, random.fork("deliveries").fork(reviewId))];
  for (const one of all) writeJudgement(world, athlete, one, { reviewId, atMs: sentAtMs });
  writeMeasures(world, sending, { reviewId, judged: all }, random.fork("measures").fork(reviewId));
  return { reviewId, judged };
}

/** How often all deliveries of a day are gone through, where more than one was sent. */
const GOES_THROUGH_ALL = 0.4;

/** The same on the other deliveries of the day, filmed from where the judged one was. */
function otherDeliveries(clips: readonly SeenClip[], judged: readonly Judged[], random: Random): Judged[] {
  if (!random.chance(GOES_THROUGH_ALL)) return [];
  return judged.flatMap(({ theme, clip }) =>
    clips
      .filter(({ id, view }) => id !== clip.id && view === clip.view)
      .map((other) => ({ theme, clip: other, score: scoreOf(theme, random) })),
  );
}

/** Adds keeps and corrections to a review and charges it. At least `wanted` new corrections while there is room. */
export function writeFindings(
  world: World,
  sending: Sending,
  themes: Theme[],
  written: { reviewId: string; judged: readonly Judged[] },
  random: Random,
): void {
  const { athlete, roundId, sentAtMs } = sending;
  const { reviewId, judged } = written;
  const [clip] = sending.clips;
  if (!clip) throw new RangeError("A review without a clip.");
  const isLatest = world.nowMs - sentAtMs < LATELY_MS;
  const most = isLatest || athlete.part === null ? MAX_OPEN_CORRECTIONS : MOST_BEFORE_LATEST;
  const room = Math.max(0, most - openThemes(themes).length);
  const few = openThemes(themes).length > 0 && !isLatest;
  const isAllKnown = isForYears(athlete) && !isLatest;
  const wished = few ? random.int(1, 2) : random.int(2, 3);
  const wanted = Math.min(room, isAllKnown ? random.int(0, 1) : wished);
  const chosen = toCorrect(themes, judged, { clip, wanted, isAllKnown }, random);
  const seen = { actorId: athlete.coachId, atMs: sentAtMs, roundId };
  chosen.sort((a, b) => inDeliveryOrder(a.theme.checkpoint, b.theme.checkpoint));
  chosen.forEach(({ theme, clip: on }, position) => {
    giveCorrection(
      world,
      { theme, athleteId: athlete.id, reviewId, roundId, clip: on, position },
      seen,
      random,
    );
    drawMark(world, reviewId, { theme, clip: on, position });
  });
  writeKeeps(world, reviewId, judged, chosen.length, random);
  const work = { kind: "review", athleteId: athlete.id, coachId: athlete.coachId } as const;
  const when = { siteId: athlete.siteId, whenMs: sentAtMs, atMs: sentAtMs };
  writeCharge(world, { ...work, ...when, source: { reviewId } });
}

type Chosen = Pick<Judged, "theme" | "clip">;

/**
 * The worst judged first, none that has a correction already; when too few are left, something new is looked at, unless
 * all has been looked at before.
 */
function toCorrect(
  themes: Theme[],
  judged: readonly Judged[],
  { clip, wanted, isAllKnown }: { clip: SeenClip; wanted: number; isAllKnown: boolean },
  random: Random,
): Chosen[] {
  const chosen: Chosen[] = judged
    .filter(({ theme, score }) => theme.correction === null && score <= 2)
    .sort((a, b) => a.theme.level - b.theme.level)
    .slice(0, Math.max(0, wanted));
  while (!isAllKnown && chosen.length < wanted) {
    const theme = freshTheme(themes, clip.view, false, random);
    if (!theme) break;
    themes.push(theme);
    chosen.push({ theme, clip });
  }
  return chosen;
}

/** A judgement on a clip, or in person when there is none. */
export function writeJudgement(
  world: World,
  athlete: Athlete,
  { theme, clip, score }: { theme: Theme; clip?: SeenClip; score: JudgementScore },
  on: { reviewId?: string; sessionId?: string; atMs: number },
): void {
  const { reviewId = null, sessionId = null, atMs } = on;
  world.rows.judgement.push({
    ...{ id: world.id("jdg"), athleteId: athlete.id, checkpointId: theme.checkpoint.id, reviewId, sessionId },
    ...{ clipId: clip?.id ?? null, frame: clip ? clip.frames[theme.checkpoint.event] : null },
    ...{
      view: clip?.view ?? null,
      score,
      coachPersonId: athlete.coachId,
      judgedOn: dayIn(world, atMs),
      atMs,
    },
  });
}

function markEvents(world: World, reviewId: string, clip: SeenClip, random: Random): void {
  for (const event of DELIVERY_EVENTS) {
    if (isApproximate(event) && random.chance(0.5)) continue;
    const frame = clip.frames[event];
    world.rows.eventMark.push({ id: world.id("evm"), reviewId, clipId: clip.id, event, frame });
  }
}

/** One or two strengths; a review without a correction has one at least. */
function writeKeeps(
  world: World,
  reviewId: string,
  judged: readonly Judged[],
  corrections: number,
  random: Random,
): void {
  const strong = judged.filter(({ score }) => score === 3);
  const some = random.shuffled(strong).slice(0, random.int(1, 2));
  const best = [...judged].sort((a, b) => b.theme.level - a.theme.level).slice(0, 1);
  const kept = some.length > 0 || corrections > 0 ? some : best;
  kept.sort((a, b) => inDeliveryOrder(a.theme.checkpoint, b.theme.checkpoint));
  kept.forEach(({ theme: { checkpoint }, clip }, position) => {
    world.rows.keep.push({
      ...{ id: world.id("kep"), reviewId, checkpointId: checkpoint.id, phase: checkpoint.phase },
      text: `${random.pick(["Keep this", "Still there", "Well done"])}: ${lowerFirst(checkpoint.clearLooksLike)}`,
      ...{ clipId: clip.id, frame: clip.frames[checkpoint.event], position },
    });
  });
}

const lowerFirst = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);
