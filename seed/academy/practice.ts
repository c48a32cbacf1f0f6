import { maySignIn } from "@/server/domain/people/person";
import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { openThemes } from "./correction-rows";
import { speakerFor } from "./roster";
import { dayIn } from "./round-plan";
import type { Story } from "./story";

const LONGEST_DAYS = 14;

/** Ticks the days on which the open corrections were practised between two instants, two weeks at most. */
export function writePractice(story: Story, { fromMs, toMs }: { fromMs: number; toMs: number }): void {
  const { world, improves, random } = story;
  const first = dayIn(world, fromMs);
  const last = dayIn(world, Math.min(toMs, world.nowMs));
  const share = improves ? random.between(0.3, 0.65) : random.between(0.05, 0.3);
  const days = Array.from({ length: LONGEST_DAYS }, (_, index) => addDays(first, index + 1));
  for (const day of days.filter((one) => one < last && random.chance(share))) tickDay(story, day);
}

function tickDay({ world, athlete, themes, random }: Story, practisedOn: CalendarDay): void {
  const alone = maySignIn(athlete.bornOn, practisedOn);
  const tickedByPersonId = alone ? athlete.personId : speakerFor(athlete, practisedOn);
  for (const { correction } of openThemes(themes)) {
    if (!correction || !random.chance(0.8)) continue;
    world.rows.practiceDay.push({ correctionId: correction.row.id, practisedOn, tickedByPersonId });
  }
}
