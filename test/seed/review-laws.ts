import { expect, it } from "vitest";
import { clipParameters } from "@/seed/clips/clip-parameters";
import {
  type CorrectionEvent,
  isOpen,
  MAX_OPEN_CORRECTIONS,
  standingOf,
} from "@/server/domain/reviews/correction-state";
import { reviewDraftSchema } from "@/server/domain/reviews/draft";
import { lateness } from "@/server/domain/reviews/promise";
import {
  isOwed,
  moveRound,
  ROUND_STATES,
  type RoundEventKind,
  type RoundState,
} from "@/server/domain/reviews/round-state";
import { type BuiltDay, groupedBy } from "./demo-days";

const OUTBOX_MS = 21 * 86_400_000;

/** What the domain asks of rounds, reviews and corrections. */
export function describeReviews({ rows, nowMs, today }: BuiltDay): void {
  const eventsOf = groupedBy(rows.correctionEvent, ({ correctionId }) => correctionId);
  const correctionsOf = groupedBy(rows.correction, ({ athleteId }) => athleteId);
  const wordsOf = new Map(rows.remark.map(({ id, text }) => [id, text]));
  const historyOf = (correctionId: string): CorrectionEvent[] =>
    eventsOf(correctionId).map(({ kind, atMs, remarkId }) => {
      return { kind, atMs, reason: wordsOf.get(remarkId ?? "") ?? "" };
    });

  it("holds every round state, eight in the queue and at least one of them late", () => {
    const states = new Set(rows.round.map(({ state }) => state));
    expect(ROUND_STATES.filter((state) => !states.has(state))).toEqual([]);
    const owed = rows.round.filter(({ state }) => isOwed(state));
    expect(owed).toHaveLength(8);
    const late = owed.filter(({ dueAtMs }) => lateness(dueAtMs ?? 0, nowMs).kind === "late");
    expect(late.length).toBeGreaterThanOrEqual(1);
    const amiss = rows.round.filter(({ state, dueAtMs }) => (typeof dueAtMs === "number") !== isOwed(state));
    expect(amiss).toEqual([]);
  });

  it("brings each round to its state by its own events, in the order in which they happened", () => {
    const stepsOf = groupedBy(rows.roundEvent, ({ roundId }) => roundId);
    const amiss = rows.round.filter(({ id, state, receivedAtMs }) => {
      const steps = stepsOf(id);
      const inOrder = steps.every(({ atMs }, index) => atMs >= (steps[index - 1]?.atMs ?? 0));
      return !inOrder || steps[0]?.atMs !== receivedAtMs || stateAfter(steps) !== state;
    });
    expect(amiss).toEqual([]);
  });

  it("asks for a clip where it is the family's turn alone, and says of a retake why and what is left of the promise", () => {
    const turn: readonly RoundState[] = ["sent", "retake", "lapsed"];
    const isSet = (value: unknown) => value !== null && value !== undefined;
    const amiss = rows.round.filter(({ state, replyFrom, lapsesOn, ...row }) => {
      const isAsked = isSet(replyFrom) && isSet(lapsesOn) && (replyFrom ?? "") < (lapsesOn ?? "");
      const isPaused = isSet(row.pausedOpenMs) && isSet(row.retakeFrom) && isSet(row.retakeRemarkId);
      return isAsked !== turn.includes(state) || isPaused !== (state === "retake");
    });
    expect(amiss).toEqual([]);
    const waiting = rows.round.filter(({ state }) => state === "retake");
    expect(waiting.map(({ lapsesOn }) => (lapsesOn ?? "") > today)).toEqual([true]);
  });

  it("has told the coach and the family alike of every clip that came in lately, and of every round withdrawn", () => {
    const toldAt = groupedBy(
      rows.notice,
      ({ aboutAthleteId, createdAtMs }) => `${aboutAthleteId} ${createdAtMs}`,
    );
    const coachOf = new Map(rows.athlete.map(({ id, coachPersonId }) => [id, coachPersonId]));
    const athleteOf = new Map(rows.round.map(({ id, athleteId }) => [id, athleteId]));
    const told = rows.roundEvent
      .filter(
        ({ kind, atMs }) => ["received", "answered", "withdrawn"].includes(kind) && atMs >= nowMs - OUTBOX_MS,
      )
      .map(({ roundId, atMs }) => {
        const athleteId = athleteOf.get(roundId) ?? "";
        const to = toldAt(`${athleteId} ${atMs}`).map(({ toPersonId }) => toPersonId);
        return [to.includes(coachOf.get(athleteId) ?? ""), to.length > 1];
      });
    expect(told.length).toBeGreaterThan(8);
    expect(told.filter(([coach, family]) => !coach || !family)).toEqual([]);
  });

  it("has every correction stand where its events put it", () => {
    const amiss = rows.correction.filter(({ id, state, cameBack, closedAtMs }) => {
      const history = historyOf(id);
      const standing = standingOf(history);
      const inOrder = history.every(({ atMs }, index) => atMs >= (history[index - 1]?.atMs ?? 0));
      const closed = isOpen(standing.state) ? null : standing.history.at(-1)?.fromMs;
      return !inOrder || state !== standing.state || cameBack !== standing.cameBack || closedAtMs !== closed;
    });
    expect(amiss).toEqual([]);
  });

  it("never has more corrections open for an athlete than the academy allows, at any moment of the season", () => {
    const most = rows.athlete.map(({ id }) => {
      const changes = correctionsOf(id).flatMap((correction) => openings(historyOf(correction.id)));
      let open = 0;
      const counts = changes.sort((a, b) => a.atMs - b.atMs || a.by - b.by).map(({ by }) => (open += by));
      return Math.max(0, ...counts);
    });
    expect(Math.max(...most)).toBeLessThanOrEqual(MAX_OPEN_CORRECTIONS);
  });

  it("never has two corrections open on one checkpoint of an athlete, at any moment of the season", () => {
    const onCheckpoint = groupedBy(rows.correction, (row) => `${row.athleteId} ${row.checkpointId}`);
    const keys = [...new Set(rows.correction.map((row) => `${row.athleteId} ${row.checkpointId}`))];
    const overlapping = keys.filter((key) => {
      const changes = onCheckpoint(key).flatMap(({ id }) => openings(historyOf(id)));
      const inOrder = changes.sort((a, b) => a.atMs - b.atMs || a.by - b.by).map(({ by }) => by);
      return inOrder.some((by, at) => by === 1 && inOrder[at - 1] === 1);
    });
    expect(keys.length).toBeGreaterThan(0);
    expect(overlapping).toEqual([]);
  });

  it("gives every open correction a verdict in each check", () => {
    const checks = rows.review.filter(({ kind }) => kind === "check");
    const waiting = checks.flatMap(({ athleteId, sentAtMs, roundId }) =>
      correctionsOf(athleteId).filter(({ id }) => {
        const before = historyOf(id).filter(({ atMs }) => atMs < sentAtMs);
        const judged = eventsOf(id).some((event) => event.atMs === sentAtMs && event.roundId === roundId);
        return before.length > 0 && isOpen(standingOf(before).state) && !judged;
      }),
    );
    expect(waiting).toEqual([]);
  });

  it("names at least one keep or correction in each review", () => {
    const keepsOf = groupedBy(rows.keep, ({ reviewId }) => reviewId);
    const givenIn = groupedBy(rows.correction, ({ reviewId }) => reviewId);
    const reviews = rows.review.filter(({ kind }) => kind === "review");
    expect(reviews.filter(({ id }) => keepsOf(id).length + givenIn(id).length === 0)).toEqual([]);
  });

  it("improves over the season for most athletes and not for all", () => {
    const judgedOf = groupedBy(rows.judgement, ({ athleteId }) => athleteId);
    const changes = rows.athlete.flatMap(({ id }) => {
      const scores = judgedOf(id).map(({ score }) => score);
      if (scores.length < 30) return [];
      const mean = (part: number[]) => part.reduce((sum, score) => sum + score, 0) / part.length;
      const third = Math.floor(scores.length / 3);
      return [mean(scores.slice(-third)) - mean(scores.slice(0, third))];
    });
    const better = changes.filter((change) => change > 0.25).length;
    expect(better / changes.length).toBeGreaterThan(0.5);
    expect(better).toBeLessThan(changes.length - 3);
  });

  it("holds a draft that the review room can open", () => {
    const drafts = rows.draft.map(
      ({ document }) => reviewDraftSchema.safeParse(JSON.parse(document)).success,
    );
    expect(drafts).toEqual([true]);
  });
}

/** What the domain asks of clips, those to be drawn above all. */
export function describeClips({ rows, today, demoClips }: BuiltDay): void {
  it("marks every frame within its clip", () => {
    const framesOf = new Map(rows.clip.map(({ id, frameCount }) => [id, frameCount ?? 0]));
    const marked = [
      ...rows.eventMark,
      ...rows.judgement,
      ...rows.keep,
      ...rows.correction,
      ...rows.correctionEvent,
    ];
    const amiss = marked.filter(({ clipId, frame }) => {
      if (clipId === null || clipId === undefined) return typeof frame === "number";
      return typeof frame !== "number" || frame >= (framesOf.get(clipId) ?? 0);
    });
    expect(amiss).toEqual([]);
  });

  it("draws exactly the clips that are still kept, each within what can be drawn", () => {
    const drawing = rows.clip.filter(({ state }) => state === "drawing");
    expect(demoClips.map(({ clipId }) => clipId).sort()).toEqual(drawing.map(({ id }) => id).sort());
    const amiss = rows.clip.filter(({ retainUntil, state, storageName }) => {
      return (
        retainUntil >= today !== (state === "drawing") ||
        (typeof storageName === "string") !== (state === "drawing")
      );
    });
    expect(amiss).toEqual([]);
    for (const { parameters, storageName } of demoClips) {
      expect(clipParameters(parameters).fps).toBe(60);
      expect(storageName).toMatch(/^[0-9a-f]{32}$/);
    }
  });

  it("shows faults on every first clip, and less of them on the reply of the rounds that were settled lately", () => {
    const clipOf = new Map(rows.clip.map((clip) => [clip.id, clip]));
    const faultsIn = (roundId: string, part: string) => {
      const drawn = demoClips.find(({ clipId }) => {
        const clip = clipOf.get(clipId);
        return clip?.roundId === roundId && clip.part === part;
      });
      const severities = Object.values(drawn?.parameters.faults ?? {});
      return severities.reduce((sum, severity) => sum + severity, 0);
    };
    const roundIds = new Set(demoClips.map(({ clipId }) => clipOf.get(clipId)?.roundId ?? ""));
    const drawn = rows.round.filter(({ id, state }) => roundIds.has(id) && state !== "retake");
    for (const { id } of drawn) expect(faultsIn(id, "first")).toBeGreaterThan(0.8);
    const settled = drawn.filter(({ state }) => state === "settled");
    expect(settled).toHaveLength(2);
    for (const { id } of settled) expect(faultsIn(id, "reply")).toBeLessThan(faultsIn(id, "first"));
  });
}

/** The state that a round's events lead to. @throws Error when one of them cannot have happened */
function stateAfter(steps: readonly { kind: RoundEventKind }[]): RoundState {
  let state: RoundState = "received";
  let retakeFrom: RoundState | null = null;
  for (const { kind } of steps.slice(1)) {
    if (kind === "received") throw new Error("A round is received once.");
    if (kind === "retake_asked") retakeFrom = state;
    const move = moveRound(state, kind, { retakeFrom, awaitingVerdict: 0 });
    if (!move.ok) throw new Error(`${kind} from ${state}`);
    state = move.state;
  }
  return state;
}

/** When a correction was opened (+1) and closed (-1). */
function openings(history: readonly CorrectionEvent[]): { atMs: number; by: number }[] {
  const states = history.map((_, index) => isOpen(standingOf(history.slice(0, index + 1)).state));
  return history.flatMap(({ atMs }, index) => {
    const [now = false, before = false] = [states[index], states[index - 1]];
    return now === before ? [] : [{ atMs, by: now ? 1 : -1 }];
  });
}
