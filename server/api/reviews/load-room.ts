import { findSettings } from "@/server/data/academy-settings";
import { listCheckpoints } from "@/server/data/checkpoints";
import { correctionsOf } from "@/server/data/corrections";
import { findDraft, type KeptDraft } from "@/server/data/drafts";
import { listTemplates } from "@/server/data/review-templates";
import { judgementsIn, latestJudgements, sentReviewsOf } from "@/server/data/reviews";
import { playableClips } from "@/server/data/round-clips";
import { drawingProgress } from "@/server/data/today";
import type { DraftKind } from "@/server/domain/reviews/draft";
import { templatesForAge } from "@/server/domain/reviews/review-template";
import { headOf } from "../athlete-head";
import type { Scope } from "../context";
import { roundInHand } from "../round-in-hand";
import { coachNameOf, correctionView, measuredOn, roundView, sentView } from "./round-parts";
import type { RoomView } from "./shapes";

/** Everything the review room shows of a round: clips, checkpoints, corrections, and what is being written. */
export async function loadRoom(scope: Scope, roundId: string): Promise<RoomView> {
  const { db, actor, athlete, today } = scope;
  const round = await roundInHand(db, roundId);
  const settings = await findSettings(db);
  if (!settings) throw new Error("There is no academy yet.");
  const corrections = await correctionsOf(db, athlete.athleteId);
  const clips = await playableClips(db, round.id, clipsOf(corrections));
  const sent = await sentReviewsOf(db, round.id);
  const head = await headOf(scope);
  const templates = (await listTemplates(db)).filter((each) => each.active);
  const judgements = await Promise.all(sent.map((each) => judgementsIn(db, each.id)));
  return {
    round: await roundView(db, round),
    zone: athlete.zone,
    today,
    athlete: head,
    coachName: await coachNameOf(db, round),
    isMine: round.coachPersonId === actor.personId,
    isCoach: actor.roles.includes("coach"),
    maxOpen: settings.maxOpenCorrections,
    clips,
    drawing: await drawingProgress(db),
    checkpoints: (await listCheckpoints(db)).map(({ version, ...each }) => each),
    latestJudgements: await latestJudgements(db, athlete.athleteId),
    corrections: corrections.map((each) => correctionView(each, scope)),
    templates: templatesForAge(templates, head.ageYears),
    ...(await measuredOn(db, clips)),
    judgements: judgements.flat(),
    reviewDraft: shown(await findDraft(db, round.id, "review")),
    checkDraft: shown(await findDraft(db, round.id, "check")),
    sent: sent.map(sentView),
  };
}

/** The clips of open corrections, so that one carried over from an earlier round still opens on its frame. */
function clipsOf(corrections: Awaited<ReturnType<typeof correctionsOf>>): string[] {
  return corrections.flatMap(({ standing, clipId }) =>
    clipId !== null && (standing.state === "given" || standing.state === "showing") ? [clipId] : [],
  );
}

function shown<Kind extends DraftKind>(draft: KeptDraft<Kind> | null) {
  if (draft === null) return null;
  const { openedAtMs, ...rest } = draft;
  return rest;
}
