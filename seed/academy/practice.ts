import { maySignIn } from "@/server/domain/people/person";
import { addDays } from "@/server/domain/time/calendar-day";
import { openThemes } from "./correction-rows";
import { speakerFor } from "./roster";
import { dayIn } from "./round-plan";
import type { Story } from "./story";

const LONGEST_DAYS = 14;

/** Ticks the days on which the open corrections were practised between two instants, two weeks at most. */
export function writePractice(
  { world, athlete, themes, improves, random }: Story,
  { fromMs, toMs }: { fromMs: number; toMs: number },
): void {
  const last = dayIn(world, Math.min(toMs, world.nowMs));
  const share = improves ? random.between(0.3, 0.65) : random.between(0.05, 0.3);
  let day = addDays(dayIn(world, fromMs), 1);
  for (let count = 0; count < LONGEST_DAYS && day < last; count += 1, day = addDays(day, 1)) {
    if (!random.chance(share)) continue;
    for (const { correction } of openThemes(themes)) {
      if (!correction || !random.chance(0.8)) continue;
      const alone = maySignIn(athlete.bornOn, day);
      world.rows.practiceDay.push({
        correctionId: correction.row.id,
        practisedOn: day,
        tickedByPersonId: alone ? athlete.personId : speakerFor(athlete, day),
      });
    }
  }
}
