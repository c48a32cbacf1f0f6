import { aboutArms } from "./arm-messages";
import { isRecent, type Message } from "./message";
import type { Athlete } from "./roster";
import { aboutRounds } from "./round-messages";
import { aboutSessions } from "./session-messages";
import type { World } from "./world";

/** What the academy told its people over the last weeks, kept because no mail server is set. */
export function writeNotices(world: World, athletes: readonly Athlete[]): void {
  const told = { world, byId: new Map(athletes.map((athlete) => [athlete.id, athlete])) };
  const messages = [...aboutRounds(told), ...aboutSessions(told), ...aboutArms(told)];
  const recent = messages.filter(({ atMs }) => isRecent(world, atMs));
  for (const message of recent.sort((a, b) => a.atMs - b.atMs)) tell(world, message);
}

function tell(world: World, { to, aboutAthleteId, words, atMs }: Message): void {
  for (const toPersonId of to) {
    world.rows.notice.push({
      ...{ id: world.id("ntc"), toPersonId, aboutAthleteId, ...words },
      ...{ state: "kept", attempts: 0, nextTryAtMs: atMs, createdAtMs: atMs },
    });
  }
}
