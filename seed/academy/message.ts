import { type NoticeWords, recipientsFor } from "@/server/domain/notices/notice";
import { fullName, isOfAge, maySignIn } from "@/server/domain/people/person";
import { ageOn } from "@/server/domain/time/calendar-day";
import type { Athlete } from "./roster";
import { dayIn } from "./round-plan";
import type { World } from "./world";

/** Something the academy told people of, and when. */
export interface Message {
  to: readonly string[];
  aboutAthleteId: string | null;
  words: NoticeWords;
  atMs: number;
}

/** What the outbox is written from: the world, and the athletes by id. */
export interface Told {
  world: World;
  byId: ReadonlyMap<string, Athlete>;
}

/** How far back the outbox of the demo goes, in milliseconds: three weeks. */
const OUTBOX_MS = 21 * 86_400_000;

/** Whether the outbox still holds what was told at an instant. */
export function isRecent({ nowMs }: World, atMs: number): boolean {
  return nowMs - OUTBOX_MS <= atMs && atMs <= nowMs;
}

/** A message to those of an athlete's family who are told on that day. */
export function toFamily(world: World, athlete: Athlete, words: NoticeWords, atMs: number): Message {
  const day = dayIn(world, atMs);
  const row = world.rows.athlete.find(({ id }) => id === athlete.id);
  const to = recipientsFor({
    athletePersonId: athlete.personId,
    ageYears: ageOn(athlete.bornOn, day),
    athleteHasSignIn: maySignIn(athlete.bornOn, day),
    guardianPersonIds: athlete.guardianIds,
    grantsGuardians: isOfAge(athlete.bornOn, day) && row?.grantsGuardians === true,
  });
  return { to, aboutAthleteId: athlete.id, words, atMs };
}

/** A message to an athlete's coach. */
export function toCoach(athlete: Athlete, words: NoticeWords, atMs: number): Message {
  return { to: [athlete.coachId], aboutAthleteId: athlete.id, words, atMs };
}

/** Given and family name of a person of the world. */
export function nameOf({ rows }: World, personId: string | null | undefined): string {
  return fullName(rows.person.find(({ id }) => id === personId) ?? { givenName: "", familyName: "" });
}

/** The words kept under an id; empty when there are none. */
export function remarkText({ rows }: World, remarkId: string | null | undefined): string {
  return rows.remark.find(({ id }) => id === remarkId)?.text ?? "";
}
