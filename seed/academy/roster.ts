import { VIDEO_CONSENT } from "@/server/domain/people/consent";
import type { ThrowingHand } from "@/server/domain/people/person";
import { isOfAge, maySignIn } from "@/server/domain/people/person";
import { USA_BASEBALL_2018 } from "@/server/domain/throwing/books/usa-baseball-2018";
import { addDays, addMonths, type CalendarDay } from "@/server/domain/time/calendar-day";
import { FAMILIES } from "../families";
import {
  addressOf,
  type CastAthlete,
  type CastFamily,
  STAFF,
  type StaffKey,
  type StaffMember,
  type StoryPart,
} from "../people";
import type { Random } from "../seeded-random";
import type { Arm } from "./arm";
import { at, dayFromToday, FOUNDED_DAYS, SEASON_DAYS, type World } from "./world";

/** An athlete while the season is being told. */
export interface Athlete {
  id: string;
  personId: string;
  given: string;
  bornOn: CalendarDay;
  age: number;
  throws: ThrowingHand;
  heightCm: number;
  siteId: string;
  coachId: string;
  joinedOn: CalendarDay;
  guardianIds: string[];
  part: StoryPart | null;
  arm: Arm;
  /** The team they pitch for, if any. */
  teamId: string | null;
  /** How far back their rounds and throws go, in days, if they have been there as long. */
  historyDays: number;
  /** Share of weeks with a session. */
  keenness: number;
  random: Random;
  /** Place in the roster, from 0. */
  index: number;
}

/** Who speaks for the athlete: a guardian of a minor, else the athlete. */
export function speakerFor(athlete: Athlete, day: CalendarDay): string {
  return isOfAge(athlete.bornOn, day) ? athlete.personId : (athlete.guardianIds[0] ?? athlete.personId);
}

/** Brings in the staff. */
export function buildStaff(world: World): void {
  const joinedMs = at(world, dayFromToday(world, -FOUNDED_DAYS), 600);
  for (const [key, member] of Object.entries(STAFF) as [StaffKey, StaffMember][]) {
    const email = addressOf(member.given, member.family, member.mailbox);
    const personId = addPerson(world, { given: member.given, family: member.family, email }, joinedMs);
    world.staffIds[key] = personId;
    for (const role of member.roles) world.rows.staffRole.push({ personId, role });
  }
}

/** Brings in every family; the athletes come in the order of the cast. */
export function buildRoster(world: World): Athlete[] {
  const athletes: Athlete[] = [];
  for (const family of FAMILIES) addFamily(world, family, athletes);
  return athletes;
}

function addFamily(world: World, family: CastFamily, athletes: Athlete[]): void {
  const random = world.random.fork(`family ${family.name}`);
  const daysAgo = random.chance(0.8) ? SEASON_DAYS + random.int(20, 300) : random.int(120, SEASON_DAYS - 20);
  const longest = Math.max(...family.athletes.map(historyDays));
  const joinedOn = dayFromToday(world, -(longest > SEASON_DAYS ? longest + JOINED_BEFORE_DAYS : daysAgo));
  const guardianIds = family.adults.map(({ given, mailbox, staff }) => {
    if (staff) return world.staffIds[staff];
    const email = addressOf(given, family.name, mailbox);
    return addPerson(world, { given, family: family.name, email }, at(world, joinedOn, 660));
  });
  for (const cast of family.athletes) {
    const athlete = addAthlete(world, { family, cast, joinedOn, guardianIds, index: athletes.length });
    athletes.push(athlete);
    addConsent(world, athlete);
  }
}

const YEAR_DAYS = 365;

/** Who has years of rounds joined so long before the first of them. */
const JOINED_BEFORE_DAYS = 20;

const historyDays = ({ years = 1 }: CastAthlete): number => SEASON_DAYS + YEAR_DAYS * (years - 1);

/** Whether there is more behind an athlete than the season. */
export const isForYears = (athlete: Pick<Athlete, "historyDays">): boolean =>
  athlete.historyDays > SEASON_DAYS;

interface NewAthlete {
  family: CastFamily;
  cast: CastAthlete;
  joinedOn: CalendarDay;
  guardianIds: string[];
  index: number;
}

function addAthlete(world: World, { family, cast, joinedOn, guardianIds, index }: NewAthlete): Athlete {
  const random = world.random.fork(`athlete ${cast.given} ${family.name}`);
  const bornOn = addDays(addMonths(world.today, -12 * cast.age - random.int(1, 10)), -random.int(1, 27));
  const joinedMs = at(world, joinedOn, 665);
  const hasAddress = maySignIn(bornOn, world.today);
  const email = hasAddress ? addressOf(cast.given, family.name, cast.mailbox) : null;
  const personId = addPerson(world, { given: cast.given, family: family.name, email }, joinedMs);
  const heightCm = heightAt(cast.age) + random.int(-6, 6);
  const row = {
    id: world.id("ath"),
    personId,
    bornOn,
    throws: cast.hand,
    heightCm,
    homeSiteId: world.siteIds[cast.site],
    coachPersonId: world.staffIds[cast.coach],
    joinedOn,
  };
  const grantsGuardians = cast.age >= 18 && random.chance(0.5);
  world.rows.athlete.push({ ...row, ruleBookId: USA_BASEBALL_2018.id, grantsGuardians });
  for (const guardianPersonId of guardianIds) {
    world.rows.guardianship.push({ guardianPersonId, athleteId: row.id, sinceMs: joinedMs });
  }
  return {
    ...{ id: row.id, personId, given: cast.given, bornOn, age: cast.age, throws: cast.hand, heightCm },
    ...{ siteId: row.homeSiteId, coachId: row.coachPersonId, joinedOn, guardianIds, random, index },
    part: cast.part ?? null,
    teamId: null,
    arm: { bornOn, today: world.today, entries: [], planned: [], blocked: [] },
    historyDays: historyDays(cast),
    keenness: cast.mailbox === "athlete" ? 0.9 : random.between(0.4, 0.8),
  };
}

/** Height in centimetres, rounded, of a middling boy of that age; from memory of growth charts, and only for show. */
function heightAt(age: number): number {
  const heights = [128, 133, 138, 144, 150, 157, 164, 170, 174, 176, 177, 178, 178];
  return heights[Math.min(Math.max(age - 8, 0), heights.length - 1)] ?? 178;
}

function addConsent(world: World, athlete: Athlete): void {
  if (athlete.part === "no_consent") return;
  world.rows.consent.push({
    id: world.id("cns"),
    athleteId: athlete.id,
    personId: speakerFor(athlete, athlete.joinedOn),
    purpose: "video",
    kind: "given",
    textVersion: VIDEO_CONSENT.version,
    atMs: at(world, athlete.joinedOn, 1120),
  });
}

interface NewPerson {
  given: string;
  family: string;
  email: string | null;
}

/** A person, with an account when there is an address; the password comes when the rows are written. */
function addPerson(world: World, { given, family, email }: NewPerson, createdAtMs: number): string {
  const id = world.id("per");
  world.rows.person.push({ id, givenName: given, familyName: family, email, createdAtMs });
  if (email === null) return id;
  world.rows.account.push({ personId: id, email, createdAtMs });
  world.acts.push({
    atMs: createdAtMs,
    actorPersonId: id,
    action: "account.invitation",
    subjectId: id,
    facts: {},
  });
  return id;
}
