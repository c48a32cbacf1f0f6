import {
  sessionLogInWords,
  sessionNotice,
  type ToldSession,
} from "@/server/domain/calendar/session-in-words";
import { isRecent, type Message, nameOf, remarkText, type Told, toFamily } from "./message";
import type { Athlete } from "./roster";
import type { World } from "./world";

type Session = World["rows"]["session"][number];
type ToldKind = Parameters<typeof sessionNotice>[0];

/** A session with those who come to it and what is planned for each. */
interface Coming {
  world: World;
  session: Session;
  athletes: readonly { athlete: Athlete; plannedPitches: number }[];
}

/** What families and coaches were told of their sessions lately: booked, cancelled, logged. */
export function aboutSessions({ world, byId }: Told): Message[] {
  return world.rows.session.flatMap((session) => {
    const { bookedAtMs, cancelledAtMs, endsAtMs } = session;
    if (![bookedAtMs, cancelledAtMs ?? 0, endsAtMs].some((atMs) => isRecent(world, atMs))) return [];
    const athletes = world.rows.sessionAthlete
      .filter(({ sessionId }) => sessionId === session.id)
      .flatMap(({ athleteId, plannedPitches }) => {
        const athlete = byId.get(athleteId);
        return athlete ? [{ athlete, plannedPitches }] : [];
      });
    const coming = { world, session, athletes };
    return [...booked(coming), ...cancelled(coming), ...logged(coming)];
  });
}

/** The session as a notice names it. */
export function toldSession(world: World, session: Session): ToldSession {
  const { kind, startsAtMs, siteId, laneId, coachPersonId } = session;
  return {
    ...{ kind, startsAtMs, zone: world.zone, coachName: nameOf(world, coachPersonId) },
    siteName: world.rows.site.find(({ id }) => id === siteId)?.name ?? "",
    laneName: world.rows.lane.find(({ id }) => id === laneId)?.name ?? "",
  };
}

function booked(coming: Coming): Message[] {
  const { bookedAtMs, bookedByPersonId, coachPersonId } = coming.session;
  const planned = ({ plannedPitches }: Coming["athletes"][number]) =>
    plannedPitches > 0 ? [`${plannedPitches} pitches planned.`] : [];
  const isByCoach = bookedByPersonId === coachPersonId;
  return [
    ...toFamilies(coming, "session_booked", bookedAtMs, planned),
    ...(isByCoach ? [] : toItsCoach(coming, "session_booked", bookedAtMs)),
  ];
}

function cancelled(coming: Coming): Message[] {
  const { cancelledAtMs, cancelRemarkId } = coming.session;
  if (!cancelledAtMs) return [];
  const reason = remarkText(coming.world, cancelRemarkId);
  return [
    ...toFamilies(coming, "session_cancelled", cancelledAtMs, () => [reason]),
    ...toItsCoach(coming, "session_cancelled", cancelledAtMs),
  ];
}

/** A coach logs their own sessions, and is told nothing of it. */
function logged(coming: Coming): Message[] {
  const { world, session } = coming;
  const logs = world.rows.sessionLog.filter(({ sessionId }) => sessionId === session.id);
  const [first] = logs;
  if (!first) return [];
  return toFamilies(coming, "session_logged", first.loggedAtMs, ({ athlete }) =>
    logs
      .filter(({ athleteId }) => athleteId === athlete.id)
      .flatMap((log) =>
        sessionLogInWords({
          ...{ attendance: log.attendance, minutes: log.minutes, pitches: log.pitches },
          ...{ effort: log.effort ?? null, strikes: log.strikes ?? null },
          ...{ topSpeed: log.topSpeed ?? null, speedUnit: log.speedUnit ?? null },
          ...{ held: heldIn(world, log.id), note: remarkText(world, log.remarkId) },
        }),
      ),
  );
}

function heldIn({ rows }: World, sessionLogId: string): number {
  return rows.sessionWork.filter((work) => work.sessionLogId === sessionLogId && work.outcome === "confirmed")
    .length;
}

function toFamilies(
  { world, session, athletes }: Coming,
  kind: ToldKind,
  atMs: number,
  more: (one: Coming["athletes"][number]) => string[],
): Message[] {
  const card = toldSession(world, session);
  return athletes.map((one) =>
    toFamily(world, one.athlete, sessionNotice(kind, one.athlete.given, card, more(one)), atMs),
  );
}

function toItsCoach({ world, session, athletes }: Coming, kind: ToldKind, atMs: number): Message[] {
  const names = athletes.map(({ athlete }) => athlete.given).join(", ");
  const words = sessionNotice(kind, names, toldSession(world, session), []);
  return [{ to: [session.coachPersonId], aboutAthleteId: null, words, atMs }];
}
