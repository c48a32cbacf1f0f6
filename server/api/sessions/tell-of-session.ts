import { tellFamily, tellPerson } from "@/server/data/notices";
import type { SessionCard } from "@/server/data/sessions";
import { sessionInWords, sessionNotice } from "@/server/domain/calendar/session-in-words";
import { env } from "@/server/env";
import type { Scope } from "../context";

type ToldKind = Parameters<typeof sessionNotice>[0];

/**
 * Tells each athlete's family what happened to a session, and its coach unless the coach did it.
 * @param more what else there is to say, by athlete
 */
export async function tellOfSession(
  scope: Pick<Scope, "db" | "actor" | "nowMs">,
  card: SessionCard,
  kind: ToldKind,
  more: (athlete: SessionCard["athletes"][number]) => string[] = () => [],
): Promise<void> {
  const { db, actor, nowMs } = scope;
  for (const athlete of card.athletes) {
    const link = `${env.publicUrl}/family/${athlete.athleteId}/sessions/${card.id}`;
    const text = sessionNotice(kind, athlete.givenName, card, [...more(athlete), link]);
    await tellFamily(db, athlete.athleteId, text, nowMs);
  }
  if (card.coachPersonId === actor.personId) return;
  const names = card.athletes.map((athlete) => athlete.givenName).join(", ");
  const link = `${env.publicUrl}/calendar/${card.id}`;
  await tellPerson(db, card.coachPersonId, sessionNotice(kind, names, card, [link]), nowMs);
}

/** Tells the coach who had a session before it was moved that it is another's now, unless they did it. */
export async function tellFormerCoach(
  { db, actor, nowMs }: Pick<Scope, "db" | "actor" | "nowMs">,
  before: SessionCard,
  after: SessionCard,
): Promise<void> {
  const formerId = before.coachPersonId;
  if (formerId === after.coachPersonId || formerId === actor.personId) return;
  const names = after.athletes.map((athlete) => athlete.givenName).join(", ");
  const more = [`It was yours until now: ${sessionInWords(before)}. You need do nothing.`];
  await tellPerson(db, formerId, sessionNotice("session_moved", names, after, more), nowMs);
}
