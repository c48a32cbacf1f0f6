import type { JudgementScore } from "@/server/domain/mechanics/judgement";
import { moveTheme, openThemes } from "./correction-rows";
import { writeJudgement } from "./review-rows";
import type { SessionTale } from "./session-rows";
import type { Story } from "./story";
import { scoreOf, shift, type Theme } from "./themes";

/** How long a settled round is followed up by the next lesson, in milliseconds: two weeks. */
const FOLLOW_UP_MS = 14 * 86_400_000;

const PLANNED_AT_MOST = 3;

/** Puts the open corrections on a session's plan, and, when it was logged, tells what was worked on and what held. */
export function workOnSession(story: Story, tale: SessionTale): void {
  const { world, athlete, themes, random, settled } = story;
  const { row } = tale;
  if (row.kind === "group") return;
  const planned = random.shuffled(openThemes(themes)).slice(0, PLANNED_AT_MOST);
  for (const { correction } of planned) {
    if (correction) world.rows.sessionPlan.push({ sessionId: row.id, correctionId: correction.row.id });
  }
  const followsUp = settled !== null && row.startsAtMs - settled.atMs < FOLLOW_UP_MS && row.kind === "lesson";
  if (followsUp && row.bookedAtMs > settled.atMs) row.roundId = settled.roundId;
  const logId = tale.logIds.get(athlete.id);
  if (!logId) return;
  for (const theme of planned) workOn(story, tale, logId, theme);
  if (row.kind === "assessment") assess(story, tale);
}

function workOn({ world, improves, random }: Story, tale: SessionTale, logId: string, theme: Theme): void {
  const { correction } = theme;
  if (!correction) return;
  shift(theme, improves ? random.between(0.05, 0.3) : random.between(-0.05, 0.12));
  const confirmed = correction.standing.state === "showing" && theme.level > 2.3 && random.chance(0.3);
  const outcome = confirmed ? "confirmed" : "worked_on";
  world.rows.sessionWork.push({ sessionLogId: logId, correctionId: correction.row.id, outcome });
  if (!confirmed) return;
  const seen = { actorId: tale.coachId, atMs: tale.row.endsAtMs, sessionId: tale.row.id };
  moveTheme(world, theme, "confirmed", seen);
}

/** An assessment judges everything that is followed, in person. */
function assess({ world, athlete, themes, random }: Story, { row }: SessionTale): void {
  for (const theme of themes) {
    const score: JudgementScore = scoreOf(theme, random);
    writeJudgement(world, athlete, { theme, score }, { sessionId: row.id, atMs: row.endsAtMs });
  }
}
