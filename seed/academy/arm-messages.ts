import { sessionNotice } from "@/server/domain/calendar/session-in-words";
import { clearanceNotice, painNotice } from "@/server/domain/notices/pain-notices";
import { plannedWithoutRoom } from "@/server/domain/throwing/flag-planned";
import { type PainStop, painStop } from "@/server/domain/throwing/pain";
import { limitInWords, whyInSentences } from "@/server/domain/throwing/why";
import { plansOf } from "./arm";
import { LATE_GAME_AGO_MS } from "./late-game";
import { type Message, nameOf, type Told, toCoach, toFamily } from "./message";
import type { Athlete } from "./roster";
import { dayIn } from "./round-plan";
import { toldSession } from "./session-messages";
import type { World } from "./world";

/** What families and coaches were told of pain, of its end, and of booked sessions that the book has no room for. */
export function aboutArms({ world, byId }: Told): Message[] {
  const { painReport, painClearance } = world.rows;
  const late = [...byId.values()].filter(({ part }) => part === "late_game");
  return [
    ...painReport.flatMap((report) => aboutPain(world, byId.get(report.athleteId), report)),
    ...painClearance.flatMap((row) => aboutClearance(world, byId.get(row.athleteId), row)),
    ...late.flatMap((athlete) => aboutRoom(world, athlete, null, world.nowMs - LATE_GAME_AGO_MS)),
  ];
}

function aboutPain(
  world: World,
  athlete: Athlete | undefined,
  report: World["rows"]["painReport"][number],
): Message[] {
  if (!athlete) return [];
  const { kind, feltOn, reportedByPersonId, reportedAtMs } = report;
  const byName = nameOf(world, reportedByPersonId);
  const words = painNotice({ name: nameOf(world, athlete.personId), kind, feltOn, byName });
  const stop = painStop({ reports: [report], clearances: [] });
  return [
    toFamily(world, athlete, words, reportedAtMs),
    toCoach(athlete, words, reportedAtMs),
    ...aboutRoom(world, athlete, stop, reportedAtMs),
  ];
}

function aboutClearance(
  world: World,
  athlete: Athlete | undefined,
  row: World["rows"]["painClearance"][number],
): Message[] {
  if (!athlete) return [];
  const { symptomFreeSince, clearedByPersonId, clearedAtMs } = row;
  const byName = nameOf(world, clearedByPersonId);
  const words = clearanceNotice({ name: nameOf(world, athlete.personId), symptomFreeSince, byName });
  return [toFamily(world, athlete, words, clearedAtMs), toCoach(athlete, words, clearedAtMs)];
}

/** The booked sessions that had no room by the book at an instant, each told to the family and to its coach. */
function aboutRoom(world: World, athlete: Athlete, pain: PainStop | null, atMs: number): Message[] {
  const question = plansOf(athlete.arm, { today: dayIn(world, atMs), pain });
  return plannedWithoutRoom(question).flatMap(({ planned, answer }) => {
    const session = world.rows.session.find(({ id }) => id === planned.id);
    if (!session) return [];
    const words = sessionNotice("session_without_room", athlete.given, toldSession(world, session), [
      `It asks for ${planned.pitches} pitches; ${limitInWords(answer)} now. ${whyInSentences(answer).join(" ")}`,
      "Move it, plan fewer pitches, or make it a session without mound throws.",
    ]);
    const family = toFamily(world, athlete, words, atMs);
    return [{ ...family, to: [...new Set([...family.to, session.coachPersonId])] }];
  });
}
