import { chargeKindLabel } from "@/server/domain/ledger/charge-kind";
import type { NoticeKind } from "@/server/domain/notices/notice";
import { recipientsFor } from "@/server/domain/notices/notice";
import { isOfAge, maySignIn } from "@/server/domain/people/person";
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
    athleteMaySignIn: maySignIn(athlete.bornOn, day),
    guardianPersonIds: athlete.guardianIds,
    grantsGuardians: isOfAge(athlete.bornOn, day) && row?.grantsGuardians === true,
  });
}

type ById = ReadonlyMap<string, Athlete>;

function aboutRounds(world: World, byId: ById): Message[] {
  return world.rows.roundEvent.flatMap((event): Message[] => {
    const athleteId = world.rows.round.find(({ id }) => id === event.roundId)?.athleteId;
    const athlete = byId.get(athleteId ?? "");
    if (!athlete) return [];
    const base = { athlete, atMs: event.atMs };
    const { given } = athlete;
    switch (event.kind) {
      case "received":
        return [
          {
            ...base,
            to: "coach",
            kind: "clip_received",
            subject: `A clip from ${given}`,
            body: `${given} sent a clip. It is in the queue.`,
          },
        ];
      case "sent":
        return [
          {
            ...base,
            to: "family",
            kind: "review_sent",
            subject: `${given}: the review is here`,
            body: reviewBody(world, event.roundId, given),
          },
        ];
      case "answered":
        return [
          {
            ...base,
            to: "coach",
            kind: "answer_received",
            subject: `${given} answered`,
            body: `A reply clip of ${given} is waiting to be checked.`,
          },
        ];
      case "settled":
        return [
          {
            ...base,
            to: "family",
            kind: "check_sent",
            subject: `${given}: did it take?`,
            body: `The reply clip of ${given} has been checked. Each correction has its verdict.`,
          },
        ];
      case "retake_asked":
        return [
          {
            ...base,
            to: "family",
            kind: "retake_asked",
            subject: `${given}: please film once more`,
            body: `The clip of ${given} could not be used. The coach says why on the round.`,
          },
        ];
      case "lapsed":
        return [
          {
            ...base,
            to: "family",
            kind: "round_lapsed",
            subject: `${given}: no reply came`,
            body: `The time for a reply is over. Open corrections of ${given} carry over into the next round.`,
          },
        ];
      default:
        return [];
    }
  });
}

function reviewBody(world: World, roundId: string, given: string): string {
  const corrections = world.rows.correction.filter((row) => row.roundId === roundId);
  const lines = corrections.map((row, index) => `${index + 1}. ${row.cue}. Drill: ${row.drill}.`);
  return [`The review of ${given}'s clip has been sent.`, ...lines].join("\n");
}

function aboutSessions(world: World, byId: ById): Message[] {
  return world.rows.session.flatMap((session) =>
    world.rows.sessionAthlete
      .filter(({ sessionId }) => sessionId === session.id)
      .flatMap(({ athleteId }): Message[] => {
        const athlete = byId.get(athleteId);
        if (!athlete) return [];
        const what = chargeKindLabel(session.kind);
        const when = momentInWords(session.startsAtMs, world.zone);
        const about = { athlete, to: "family" } as const;
        const body = `${what} for ${athlete.given}, ${when}.`;
        const booked = { ...about, kind: "session_booked", subject: `Booked: ${when}`, body } as const;
        const messages: Message[] = [{ ...booked, atMs: session.bookedAtMs }];
        if (session.cancelledAtMs) {
          const cancelled = {
            ...about,
            kind: "session_cancelled",
            subject: `Cancelled: ${when}`,
            body,
          } as const;
          messages.push({ ...cancelled, atMs: session.cancelledAtMs });
        }
        return messages;
      }),
  );
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
