import { type Athlete, speakerFor } from "./roster";
import { at, dayFromToday, keepRemark, type World } from "./world";

const STOPPED_DAYS_AGO = 3;
const FELT_DAYS_AGO = 41;
const CLEARED_DAYS_AGO = 33;

/** How long ago an arm whose log has fallen silent was last heard of, in days. */
export const SILENT_DAYS = 33;

/** Keeps the days free that an athlete's part asks for, before anything is thrown. */
export function blockDays(world: World, athlete: Athlete): void {
  const block = (fromDays: number, toDays: number) =>
    athlete.arm.blocked.push({ from: dayFromToday(world, fromDays), to: dayFromToday(world, toDays) });
  if (athlete.part === "pain_stopped") block(-STOPPED_DAYS_AGO, 60);
  if (athlete.part === "pain_cleared") block(-FELT_DAYS_AGO, -CLEARED_DAYS_AGO + 2);
  if (athlete.part === "silent") block(-SILENT_DAYS, 60);
  if (athlete.part === "late_game") block(-6, 6);
}

/** The pain reports of the demo: one that stands, and one that a guardian or the athlete has cleared. */
export function buildPain(world: World, athlete: Athlete): void {
  if (athlete.part === "pain_stopped") reportPain(world, athlete, STOPPED_DAYS_AGO, "pain");
  if (athlete.part !== "pain_cleared") return;
  reportPain(world, athlete, FELT_DAYS_AGO, "unusual_fatigue");
  const clearedOn = dayFromToday(world, -CLEARED_DAYS_AGO);
  const clearedAtMs = at(world, clearedOn, 1110);
  const clearedByPersonId = speakerFor(athlete, clearedOn);
  world.rows.painClearance.push({
    ...{ id: world.id("pcl"), athleteId: athlete.id, clearedByPersonId, clearedAtMs },
    symptomFreeSince: dayFromToday(world, -CLEARED_DAYS_AGO - 4),
    examinedByRemarkId: keepRemark(world, "The family doctor, then the school's athletic trainer."),
  });
}

function reportPain(world: World, athlete: Athlete, daysAgo: number, kind: "pain" | "unusual_fatigue"): void {
  const feltOn = dayFromToday(world, -daysAgo);
  const text = kind === "pain" ? "Sore on the inside of the elbow since practice." : "Arm heavy for days.";
  world.rows.painReport.push({
    ...{ id: world.id("pan"), athleteId: athlete.id, kind, feltOn },
    remarkId: keepRemark(world, text),
    reportedByPersonId: speakerFor(athlete, feltOn),
    reportedAtMs: at(world, feltOn, 1225),
  });
}
