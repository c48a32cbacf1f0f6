import type { Random } from "../seeded-random";
import { writeCheck } from "./check-rows";
import { type SeenClip, writeClip } from "./clip-rows";
import { openThemes } from "./correction-rows";
import { writeDraft } from "./draft-rows";
import { writePractice } from "./practice";
import { writeFindings, writeReview } from "./review-rows";
import type { Athlete } from "./roster";
import type { Filming, RoundPlan } from "./round-plan";
import { receivedAtMs, writeRound } from "./round-rows";
import type { SessionTale } from "./session-rows";
import { workOnSession } from "./session-work";
import { shift, type Theme } from "./themes";
import type { World } from "./world";

/** One athlete's season while it is told: what shows by now, and how well it takes. */
export interface Story {
  world: World;
  athlete: Athlete;
  themes: Theme[];
  /** Most athletes get better between two clips; some do not. */
  improves: boolean;
  random: Random;
  /** The latest settled round, which a session may follow up. */
  settled: { roundId: string; atMs: number } | null;
}

interface Step {
  atMs: number;
  tell: () => void;
}

/** Tells rounds and sessions of one athlete in the order in which they happened. */
export function tellSeason(story: Story, plans: readonly RoundPlan[], tales: readonly SessionTale[]): void {
  const steps: Step[] = [
    ...plans.flatMap((plan) => roundSteps(story, plan)),
    ...tales.map((tale) => ({ atMs: tale.row.startsAtMs, tell: () => workOnSession(story, tale) })),
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
  writePractice(story, {
    fromMs: sentAtMs,
    toMs: plan.reply[0]?.sentInAtMs ?? plan.endedAtMs ?? world.nowMs,
  });
  if (plan.outcome !== "sent" && plan.outcome !== "lapsed") practise(story);
}

/** What practice between the clips does to what was corrected: much, or next to nothing. */
function practise({ themes, improves, random }: Story): void {
  for (const theme of openThemes(themes)) {
    shift(theme, improves ? random.between(0.35, 0.95) : random.between(-0.25, 0.35));
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
  for (const theme of themes) {
    const holds = theme.correction?.standing.state === "held";
    if (holds && random.chance(0.08)) shift(theme, -1.8);
    else shift(theme, random.between(-0.08, story.improves ? 0.18 : 0.06));
  }
}
