import type { AcademyRows } from "@/server/data/academy-rows";
import type { AuditedAct } from "@/server/data/audit";
import type { CameraView } from "@/server/domain/mechanics/delivery";
import { buildBlindSets } from "./academy/blind-sets";
import { openDiary } from "./academy/diary";
import { logLateGame } from "./academy/late-game";
import { writeNotices } from "./academy/notices";
import { blockDays, buildPain, SILENT_DAYS } from "./academy/pain";
import { buildPlace } from "./academy/place";
import { buildPriceList } from "./academy/price-list";
import { type Athlete, buildRoster, buildStaff, isForYears } from "./academy/roster";
import { planHistory } from "./academy/round-history";
import { dayBefore, planLately } from "./academy/round-lately";
import type { RoundPlan } from "./academy/round-plan";
import type { SessionTale } from "./academy/session-rows";
import { buildGroups, buildWeeks } from "./academy/sessions";
import { buildToday } from "./academy/sessions-of-today";
import { buildTeam } from "./academy/teams";
import { tellSeason } from "./academy/tell-season";
import { chooseThemes } from "./academy/themes";
import { buildEasyThrows, buildGames, buildLatestThrows, buildPlannedOutings } from "./academy/throws";
import { buildUsualReviews } from "./academy/usual-reviews";
import { type AcademyInput, newWorld, type World } from "./academy/world";
import type { DemoClip } from "./demo-clip";

/** A whole demo academy. Accounts have no password yet; audited acts are in order of time. */
export interface DemoAcademy {
  rows: AcademyRows;
  acts: AuditedAct[];
  /** The clips whose rows are in state `drawing`, the ones looked at first in front. */
  demoClips: DemoClip[];
}

/**
 * The demo academy as it stands on a day, with nine months behind it, of one athlete three seasons. Everything is
 * invented; the same input gives the same rows, to the last id.
 * @throws RangeError when the instant is not on the day by the sites' clock
 */
export function buildAcademy(input: AcademyInput): DemoAcademy {
  const world = newWorld(input);
  buildStaff(world);
  buildPlace(world);
  buildPriceList(world);
  const athletes = buildRoster(world);
  const tales: SessionTale[] = [];
  const lately = layDownThrows(world, athletes, tales);
  for (const athlete of athletes) tellOne(world, athlete, lately.get(athlete.id) ?? null, tales);
  for (const athlete of athletes) logLateGame(world, athlete);
  writeNotices(world, athletes);
  buildUsualReviews(world);
  buildBlindSets(world);
  const acts = world.acts.sort((a, b) => a.atMs - b.atMs);
  return { rows: world.rows, acts, demoClips: inOrderOfUse(world) };
}

/**
 * Everything that takes of an arm, what cannot move first: games, today, the rounds that are open, then the weeks'
 * sessions around them.
 */
function layDownThrows(world: World, athletes: readonly Athlete[], tales: SessionTale[]) {
  const lately = new Map<string, RoundPlan>();
  const diary = openDiary(world);
  for (const athlete of athletes) {
    blockDays(world, athlete);
    buildTeam(world, athlete);
    buildGames(world, athlete);
    buildPain(world, athlete);
  }
  buildToday(diary, athletes, tales);
  for (const athlete of athletes) {
    const plan = planLately(world, athlete, usualView(athlete));
    if (plan) lately.set(athlete.id, plan);
    buildPlannedOutings(world, athlete);
  }
  buildGroups(diary, athletes, tales);
  buildWeeks(diary, athletes, tales);
  return lately;
}

function tellOne(
  world: World,
  athlete: Athlete,
  latest: RoundPlan | null,
  tales: readonly SessionTale[],
): void {
  const view = usualView(athlete);
  const history = planHistory(world, athlete, view, dayBefore(latest, world));
  const random = athlete.random.fork("story");
  const mustImprove = athlete.part === "settled_lately" || athlete.part === "sent" || isForYears(athlete);
  const improves = mustImprove || random.chance(0.72);
  const themes = chooseThemes(view, isForYears(athlete), random);
  const story = { world, athlete, themes, improves, random, settled: null };
  const own = tales.filter(({ athleteIds }) => athleteIds.includes(athlete.id));
  tellSeason(story, latest ? [...history, latest] : history, own);
  buildEasyThrows(world, athlete, athlete.part === "silent" ? -SILENT_DAYS - 1 : -7);
  if (athlete.part !== "silent") buildLatestThrows(world, athlete);
}

/** Most are filmed from the open side, every fifth from the front and every seventh from behind. */
function usualView({ index }: Athlete): CameraView {
  if (index % 5 === 4) return "front";
  return index % 7 === 6 ? "back" : "open_side";
}

/** Clips in the order in which they will be looked at: what a coach owes first, what is over last. */
function inOrderOfUse(world: World): DemoClip[] {
  const states = ["answered", "taken", "received", "sent", "settled", "retake", "withdrawn", "lapsed"];
  const roundOf = new Map(world.rows.clip.map((clip) => [clip.id, clip.roundId]));
  const stateOf = new Map(world.rows.round.map((round) => [round.id, round.state]));
  const place = ({ clipId }: DemoClip) => states.indexOf(stateOf.get(roundOf.get(clipId) ?? "") ?? "lapsed");
  return [...world.demoClips].sort((a, b) => place(a) - place(b));
}
