import { DELIVERY_EVENTS, isApproximate } from "@/server/domain/mechanics/delivery";
import type { ReviewDraft } from "@/server/domain/reviews/draft";
import type { SeenClip } from "./clip-rows";
import type { Story } from "./story";
import { scoreOf } from "./themes";

const MINUTE_MS = 60_000;

/** A review that a coach has begun and not sent: events marked, two things judged, one correction half written. */
export function writeDraft(
  { world, athlete, themes, random }: Story,
  roundId: string,
  clips: SeenClip[],
): void {
  const [clip] = clips;
  const [worst, next] = [...themes].sort((a, b) => a.level - b.level);
  if (!clip || !worst || !next) throw new RangeError("Nothing to write a draft on.");
  const clipId = clip.id;
  const { checkpoint } = worst;
  const document: ReviewDraft = {
    eventMarks: DELIVERY_EVENTS.filter((event) => !isApproximate(event)).map((event) => ({
      ...{ clipId, event, frame: clip.frames[event] },
    })),
    judgements: [worst, next].map((theme) => ({
      ...{ checkpointId: theme.checkpoint.id, clipId, frame: clip.frames[theme.checkpoint.event] },
      score: scoreOf(theme, random),
    })),
    measures: [],
    marks: [],
    keeps: [],
    shownAgain: [],
    corrections: [
      {
        ...{ id: world.id("cor"), checkpointId: checkpoint.id, phase: checkpoint.phase },
        ...{ cue: random.pick(checkpoint.cues), drill: "", clipId, frame: clip.frames[checkpoint.event] },
        voiceId: null,
      },
    ],
  };
  world.rows.draft.push({
    ...{ roundId, kind: "review", coachPersonId: athlete.coachId, document: JSON.stringify(document) },
    ...{ version: 7, openedAtMs: world.nowMs - 70 * MINUTE_MS, savedAtMs: world.nowMs - 41 * MINUTE_MS },
  });
}
