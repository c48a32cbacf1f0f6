import { chargeKindLabel } from "@/server/domain/ledger/charge-kind";
import { type NoticeKind, recipientsFor } from "@/server/domain/notices/notice";
import { isOfAge, maySignIn } from "@/server/domain/people/person";
import type { RoundEventKind } from "@/server/domain/reviews/round-state";
import { ageOn } from "@/server/domain/time/calendar-day";
import { momentInWords } from "@/server/domain/time/words";
import type { Athlete } from "./roster";
import { dayIn } from "./round-plan";
import type { World } from "./world";

/** How far back the outbox of the demo goes, in milliseconds: three weeks. */
const OUTBOX_MS = 21 * 86_400_000;

interface Message {
  athlete: Athlete;
  to: "family" | "coach";
  kind: NoticeKind;
  subject: string;
  body: string;
  atMs: number;
}

/** What the academy told its people over the last weeks, kept because no mail server is set. */
export function writeNotices(world: World, athletes: readonly Athlete[]): void {
  const byId = new Map(athletes.map((athlete) => [athlete.id, athlete]));
  const messages = [
    ...aboutRounds(world, byId),
    ...aboutSessions(world, byId),
    ...aboutPain(world, byId),
    ...aboutLateGame(world, athletes),
  ];
  const recent = messages.filter(({ atMs }) => world.nowMs - OUTBOX_MS <= atMs && atMs <= world.nowMs);
  for (const message of recent.sort((a, b) => a.atMs - b.atMs)) tell(world, message);
}

function tell(world: World, { athlete, to, kind, subject, body, atMs }: Message): void {
  for (const toPersonId of to === "coach" ? [athlete.coachId] : familyOf(world, athlete, atMs)) {
    world.rows.notice.push({
      ...{ id: world.id("ntc"), kind, toPersonId, aboutAthleteId: athlete.id, subject, body },
      ...{ state: "kept", attempts: 0, nextTryAtMs: atMs, createdAtMs: atMs },
    });
  }
}

function familyOf(world: World, athlete: Athlete, atMs: number): string[] {
  const day = dayIn(world, atMs);
  const row = world.rows.athlete.find(({ id }) => id === athlete.id);
  return recipientsFor({
    athletePersonId: athlete.personId,
    ageYears: ageOn(athlete.bornOn, day),
    athleteHasSignIn: maySignIn(athlete.bornOn, day),
    guardianPersonIds: athlete.guardianIds,
    grantsGuardians: isOfAge(athlete.bornOn, day) && row?.grantsGuardians === true,
  });
}

type ById = ReadonlyMap<string, Athlete>;

interface RoundWords {
  to: Message["to"];
  kind: NoticeKind;
  subject: (given: string) => string;
  body: (given: string) => string;
}

const ROUND_WORDS: Partial<Record<RoundEventKind, RoundWords>> = {
  received: {
    to: "coach",
    kind: "clip_received",
    subject: (given) => `A clip from ${given}`,
    body: (given) => `${given} sent a clip. It is in the queue.`,
  },
  sent: {
    to: "family",
    kind: "review_sent",
    subject: (given) => `${given}: the review is here`,
    body: (given) => `The review of ${given}'s clip has been sent.`,
  },
  answered: {
    to: "coach",
    kind: "answer_received",
    subject: (given) => `${given} answered`,
    body: (given) => `A reply clip of ${given} is waiting to be checked.`,
  },
  settled: {
    to: "family",
    kind: "check_sent",
    subject: (given) => `${given}: did it take?`,
    body: (given) => `The reply clip of ${given} has been checked. Each correction has its verdict.`,
  },
  retake_asked: {
    to: "family",
    kind: "retake_asked",
    subject: (given) => `${given}: please film once more`,
    body: (given) => `The clip of ${given} could not be used. The coach says why on the round.`,
  },
  lapsed: {
    to: "family",
    kind: "round_lapsed",
    subject: (given) => `${given}: no reply came`,
    body: (given) =>
      `The time for a reply is over. Open corrections of ${given} carry over into the next round.`,
  },
};

function aboutRounds(world: World, byId: ById): Message[] {
  const athleteOf = new Map(world.rows.round.map((round) => [round.id, byId.get(round.athleteId)]));
  return world.rows.roundEvent.flatMap(({ kind, roundId, atMs }): Message[] => {
    const athlete = athleteOf.get(roundId);
    const words = ROUND_WORDS[kind];
    if (!athlete || !words) return [];
    const corrections = kind === "sent" ? recapLines(world, roundId) : [];
    const body = [words.body(athlete.given), ...corrections].join("\n");
    return [{ athlete, to: words.to, kind: words.kind, subject: words.subject(athlete.given), body, atMs }];
  });
}

function recapLines(world: World, roundId: string): string[] {
  return world.rows.correction
    .filter((row) => row.roundId === roundId)
    .map((row, index) => `${index + 1}. ${row.cue}. Drill: ${row.drill}.`);
}

function aboutSessions(world: World, byId: ById): Message[] {
  const sessions = new Map(world.rows.session.map((session) => [session.id, session]));
  return world.rows.sessionAthlete.flatMap(({ sessionId, athleteId }) => {
    const session = sessions.get(sessionId);
    const athlete = byId.get(athleteId);
    const isOld = !session || session.startsAtMs < world.nowMs - OUTBOX_MS;
    return isOld || !athlete ? [] : aboutSession(world, athlete, session);
  });
}

function aboutSession(world: World, athlete: Athlete, session: World["rows"]["session"][number]): Message[] {
  const what = chargeKindLabel(session.kind);
  const when = momentInWords(session.startsAtMs, world.zone);
  const about = { athlete, to: "family", body: `${what} for ${athlete.given}, ${when}.` } as const;
  const messages: Message[] = [
    { ...about, kind: "session_booked", subject: `Booked: ${when}`, atMs: session.bookedAtMs },
  ];
  if (session.cancelledAtMs) {
    const subject = `Cancelled: ${when}`;
    messages.push({ ...about, kind: "session_cancelled", subject, atMs: session.cancelledAtMs });
  }
  const log = world.rows.sessionLog.find(
    (row) => row.sessionId === session.id && row.athleteId === athlete.id && row.attendance === "came",
  );
  if (log) {
    const body = `${about.body} ${log.minutes} minutes${log.pitches > 0 ? `, ${log.pitches} pitches` : ""}.`;
    const subject = `Done: ${what.toLowerCase()}, ${when}`;
    messages.push({ ...about, kind: "session_logged", subject, body, atMs: log.loggedAtMs });
  }
  return messages;
}

function aboutPain(world: World, byId: ById): Message[] {
  return world.rows.painReport.flatMap((report): Message[] => {
    const athlete = byId.get(report.athleteId);
    if (!athlete) return [];
    const { given } = athlete;
    const text = {
      kind: "pain_reported",
      subject: `${given}: no throwing until this is cleared`,
      body: `Pain or unusual fatigue was reported for ${given}. All throwing stops until it is cleared.`,
    } as const;
    return (["family", "coach"] as const).map((to) => ({ ...text, athlete, to, atMs: report.reportedAtMs }));
  });
}

function aboutLateGame(world: World, athletes: readonly Athlete[]): Message[] {
  const atMs = world.nowMs - 24 * 60_000;
  return athletes
    .filter(({ part }) => part === "late_game")
    .flatMap((athlete) =>
      (["family", "coach"] as const).map((to) => ({
        ...{ athlete, to, atMs, kind: "session_without_room" as const },
        subject: `${athlete.given}: the booked bullpen has no room by the book`,
        body: `A game logged later leaves no room for the bullpen that is booked for ${athlete.given}. Move it, or make it dry work.`,
      })),
    );
}
