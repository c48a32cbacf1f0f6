import { writeCheck } from "./check-rows";
import { isKept, type SeenClip, writeClip } from "./clip-rows";
import { openThemes } from "./correction-rows";
import { writeDraft } from "./draft-rows";
import { writePractice } from "./practice";
import { writeFindings, writeReview } from "./review-rows";
import { isForYears } from "./roster";
import type { Filming, RoundPlan } from "./round-plan";
import { receivedAtMs, writeRound } from "./round-rows";
import type { SessionTale } from "./session-rows";
import { workOnSession } from "./session-work";
import type { Story } from "./story";
import { findSomethingToDraw, shift, type Theme } from "./themes";
import { keepRemark } from "./world";

const ADDENDA = [
  "One more thing: do the drill before throwing, not after.",
  "I looked again: begin with the first correction and leave the others for next week.",
  "The towel will do in place of the band.",
];

/** By how much a level moves of itself from round to round, over years at most. */
const COMES_AND_GOES = 0.1;

/** How often what had held slips between two rounds. */
const SLIPS = 0.08;
const SLIPS_OVER_YEARS = 0.025;

interface Step {
  atMs: number;
  tell: () => void;
}

/** Tells rounds and sessions of one athlete in the order in which they happened. */
export function tellSeason(story: Story, plans: readonly RoundPlan[], tales: readonly SessionTale[]): void {
  const steps: Step[] = [
    ...plans.flatMap((plan) => roundSteps(story, plan)),
    ...tales.map((tale) => ({ atMs: tale.row.endsAtMs, tell: () => workOnSession(story, tale) })),
  ];
  for (const { tell } of steps.sort((a, b) => a.atMs - b.atMs)) tell();
}

/** A round in up to four steps: clips in, review out, reply in, check out. */
function roundSteps(story: Story, plan: RoundPlan): Step[] {
  const { world, athlete, themes, random } = story;
  const told = { roundId: "", first: [] as SeenClip[], reply: [] as SeenClip[] };
  const clipsIn = (part: "first" | "reply", filmings: readonly Filming[]): SeenClip[] =>
    filmings.map((filming, position) => {
      const place = { athlete, roundId: told.roundId, part, position };
      return writeClip(world, filming, place, themes, random);
    });
  const steps: Step[] = [
    {
      atMs: receivedAtMs(plan),
      tell() {
        told.roundId = writeRound(world, plan);
        const [shown] = plan.first;
        if (shown && isKept(world, shown)) findSomethingToDraw(themes, shown.view, random);
        told.first = clipsIn("first", plan.first);
        writeUnusable(story, plan, told.roundId);
        if (plan.hasDraft) writeDraft(story, told.roundId, told.first);
      },
    },
  ];
  const { review, check, reply } = plan;
  if (review) steps.push({ atMs: review.sentAtMs, tell: () => sendReview(story, plan, told) });
  if (reply[0]) steps.push({ atMs: reply[0].sentInAtMs, tell: () => (told.reply = clipsIn("reply", reply)) });
  if (check) steps.push({ atMs: check.settledAtMs, tell: () => settle(story, told, check) });
  return steps;
}

/** A clip that could not be used: replaced when another came, else still the one that the retake was asked for. */
function writeUnusable({ world, athlete, themes, random }: Story, plan: RoundPlan, roundId: string): void {
  if (!plan.retake) return;
  const replaced = plan.first.length > 0;
  const place = { athlete, roundId, part: "first", position: replaced ? 1 : 0, replaced } as const;
  writeClip(world, plan.retake.unusable, place, themes, random);
}

function sendReview(story: Story, plan: RoundPlan, told: { roundId: string; first: SeenClip[] }): void {
  const { world, athlete, themes, random } = story;
  const { review } = plan;
  if (!review) return;
  const { openedAtMs, sentAtMs } = review;
  const { roundId, first: clips } = told;
  const sending = { athlete, roundId, kind: "review", clips, openedAtMs, sentAtMs } as const;
  const written = writeReview(world, sending, themes, random);
  writeFindings(world, sending, themes, written, random);
  if (plan.outcome === "settled" && random.chance(0.05)) writeAddendum(story, written.reviewId, sentAtMs);
  writePractice(story, {
    fromMs: sentAtMs,
    toMs: plan.reply[0]?.sentInAtMs ?? plan.endedAtMs ?? world.nowMs,
  });
  if (plan.outcome !== "sent" && plan.outcome !== "lapsed") practise(story);
}

/** A later word on a review, the next morning. */
function writeAddendum({ world, athlete, random }: Story, reviewId: string, sentAtMs: number): void {
  const atMs = sentAtMs + random.int(12, 18) * 3_600_000;
  const remarkId = keepRemark(world, random.pick(ADDENDA));
  world.rows.addendum.push({ id: world.id("add"), reviewId, coachPersonId: athlete.coachId, remarkId, atMs });
}

/** What practice between the clips does to what was corrected: much, or next to nothing. */
function practise({ athlete, themes, improves, random }: Story): void {
  const open = openThemes(themes);
  const beside = improves && !isForYears(athlete);
  for (const theme of themes) {
    if (!open.includes(theme)) shift(theme, beside ? random.between(0, 0.2) : 0);
    else shift(theme, improves ? random.between(0.35, 0.95) : random.between(-0.25, 0.35));
  }
}

function settle(
  story: Story,
  told: { roundId: string; reply: SeenClip[] },
  { openedAtMs, settledAtMs }: { openedAtMs: number; settledAtMs: number },
): void {
  const { world, athlete, themes, random } = story;
  const { roundId, reply: clips } = told;
  const sending = { athlete, roundId, kind: "check", clips, openedAtMs, sentAtMs: settledAtMs } as const;
  writeCheck(world, sending, themes, random);
  story.settled = { roundId, atMs: settledAtMs };
  for (const theme of themes) moveOn(theme, story);
}

/** What becomes of itself of one thing until the next round. */
function moveOn(theme: Theme, { athlete, improves, random }: Story): void {
  const holds = theme.correction?.standing.state === "held";
  const forYears = isForYears(athlete);
  const slips = holds && random.chance(forYears ? SLIPS_OVER_YEARS : SLIPS);
  const [least, most] = forYears ? [-COMES_AND_GOES, COMES_AND_GOES] : [-0.08, improves ? 0.18 : 0.06];
  shift(theme, slips ? -1.8 : random.between(least, most));
}
