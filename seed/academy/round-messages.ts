import {
  arrivalNotices,
  lapseNotice,
  retakeNotice,
  withdrawalNotice,
} from "@/server/domain/notices/round-notices";
import { standingOf } from "@/server/domain/reviews/correction-state";
import { countInWords, recapInWords, recapOf } from "@/server/domain/reviews/recap";
import { replyOffer } from "@/server/domain/reviews/reply-offer";
import type { RoundEventKind } from "@/server/domain/reviews/round-state";
import { type CheckOutcome, outcomesInWords } from "@/server/domain/reviews/settling";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { momentInWords } from "@/server/domain/time/words";
import { isRecent, type Message, nameOf, remarkText, type Told, toCoach, toFamily } from "./message";
import type { Athlete } from "./roster";
import { clipAskedFor, dayIn, owedAtMs } from "./round-plan";
import type { World } from "./world";

/** What happened to a round, with all that is told of it. */
interface Happened {
  world: World;
  athlete: Athlete;
  round: World["rows"]["round"][number];
  event: World["rows"]["roundEvent"][number];
}

const TELLING: Partial<Record<RoundEventKind, (happened: Happened) => Message[]>> = {
  received: (happened) => arrived(happened, false),
  answered: (happened) => arrived(happened, true),
  retake_asked: askedAgain,
  sent: reviewed,
  settled: checked,
  withdrawn,
  lapsed,
};

/** What families and coaches were told of their rounds lately. */
export function aboutRounds({ world, byId }: Told): Message[] {
  const roundOf = new Map(world.rows.round.map((round) => [round.id, round]));
  return world.rows.roundEvent.flatMap((event) => {
    const round = roundOf.get(event.roundId);
    const athlete = byId.get(round?.athleteId ?? "");
    if (!round || !athlete || !isRecent(world, event.atMs)) return [];
    return TELLING[event.kind]?.({ world, athlete, round, event }) ?? [];
  });
}

function arrived({ world, athlete, round, event: { atMs } }: Happened, isReply: boolean): Message[] {
  const site = world.rows.site.find(({ id }) => id === round.siteId);
  const due = `${momentInWords(owedAtMs(world, athlete, atMs), world.zone)} (${site?.name ?? ""})`;
  const words = arrivalNotices({ givenName: athlete.given, isReply, due });
  return [toFamily(world, athlete, words.family, atMs), toCoach(athlete, words.coach, atMs)];
}

function askedAgain({ world, athlete, round, event: { atMs, remarkId } }: Happened): Message[] {
  const window = windowOf(round, athlete, dayIn(world, atMs));
  const reason = remarkText(world, remarkId);
  return [toFamily(world, athlete, retakeNotice({ givenName: athlete.given, reason, window }), atMs)];
}

/** When a clip is asked for; once it has come the round no longer says. */
function windowOf({ replyFrom, lapsesOn }: Happened["round"], athlete: Athlete, askedOn: CalendarDay) {
  return replyFrom && lapsesOn ? { replyFrom, lapsesOn } : clipAskedFor(athlete, askedOn);
}

function reviewed({ world, athlete, round, event: { atMs } }: Happened): Message[] {
  const { rows } = world;
  const review = rows.review.find(({ roundId, kind }) => roundId === round.id && kind === "review");
  const recap = recapOf({
    keeps: rows.keep
      .filter(({ reviewId }) => reviewId === review?.id)
      .map(({ id, phase, frame, text }) => ({ id, phase, text, frame: frame ?? null })),
    corrections: rows.correction
      .filter(({ reviewId }) => reviewId === review?.id)
      .map((row) => ({ ...row, frame: row.frame ?? 0, checkpointName: checkpointName(world, row) })),
  });
  const today = dayIn(world, atMs);
  const reply = replyOffer({ ...windowOf(round, athlete, today), state: "sent", today });
  const words = {
    kind: "review_sent",
    subject: `The review for ${athlete.given} is here: ${countInWords(recap.count)}`,
    body: `${recapInWords(recap)}\n\nA new clip: ${reply.words}`,
  } as const;
  return [toFamily(world, athlete, words, atMs)];
}

function checked({ world, athlete, round, event: { atMs } }: Happened): Message[] {
  const { rows } = world;
  const check = rows.review.find(({ roundId, kind }) => roundId === round.id && kind === "check");
  const outcomes = outcomesAt(world, round.id, atMs);
  const corrections = rows.correction
    .filter(({ athleteId }) => athleteId === athlete.id)
    .map((row) => ({ ...row, frame: row.frame ?? null, checkpointName: checkpointName(world, row) }))
    .map((row) => ({ ...row, standing: standingAt(world, row.id, atMs) }));
  const words = {
    kind: "check_sent",
    subject: `${athlete.given}'s new clip was checked: did it take?`,
    body: outcomesInWords(outcomes, corrections, remarkText(world, check?.remarkId)),
  } as const;
  return [toFamily(world, athlete, words, atMs)];
}

function outcomesAt(world: World, roundId: string, atMs: number): CheckOutcome[] {
  return world.rows.correctionEvent.flatMap((event) => {
    const { kind, correctionId, clipId = null, frame = null } = event;
    if (event.roundId !== roundId || event.atMs !== atMs || kind === "given" || kind === "confirmed")
      return [];
    const reason = remarkText(world, event.remarkId);
    return [{ correctionId, kind, clipId, frame, reason, standing: standingAt(world, correctionId, atMs) }];
  });
}

function standingAt(world: World, correctionId: string, atMs: number) {
  const history = world.rows.correctionEvent
    .filter((event) => event.correctionId === correctionId && event.atMs <= atMs)
    .map(({ kind, atMs: at, remarkId }) => ({ kind, atMs: at, reason: remarkText(world, remarkId) }));
  return standingOf(history);
}

function checkpointName({ rows }: World, { checkpointId }: { checkpointId: string }): string {
  return rows.checkpoint.find(({ id }) => id === checkpointId)?.name ?? "";
}

function withdrawn({ world, athlete, event: { atMs, actorPersonId, remarkId } }: Happened): Message[] {
  const words = withdrawalNotice({
    ...{ givenName: athlete.given, byName: nameOf(world, actorPersonId) },
    reason: remarkText(world, remarkId),
  });
  return [toFamily(world, athlete, words, atMs), toCoach(athlete, words, atMs)];
}

function lapsed({ world, athlete, round, event: { atMs } }: Happened): Message[] {
  const words = lapseNotice({ givenName: athlete.given, lapsesOn: round.lapsesOn ?? "" });
  return [toFamily(world, athlete, words, atMs)];
}
