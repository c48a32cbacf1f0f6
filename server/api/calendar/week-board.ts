import { z } from "zod";
import { loadAcademyTime } from "@/server/data/academy-time";
import { armsOf } from "@/server/data/arms";
import { sessionsBetween } from "@/server/data/sessions";
import { freeSpans, mondayOf } from "@/server/domain/calendar/board";
import { addDays, type CalendarDay, dayOf, instantOf } from "@/server/domain/time/calendar-day";
import { timeInWords } from "@/server/domain/time/words";
import type { Scope } from "../context";
import { boardCard, boardSession } from "./day-board";

/** A week by coach: what is booked, and the gaps in which more would fit. */
export const weekBoard = z.strictObject({
  monday: z.string(),
  today: z.string(),
  sites: z.array(z.strictObject({ id: z.string(), name: z.string() })),
  days: z.array(z.string()),
  coaches: z.array(
    z.strictObject({
      id: z.string(),
      name: z.string(),
      days: z.array(
        z.strictObject({ day: z.string(), sessions: z.array(boardSession), gaps: z.array(z.string()) }),
      ),
    }),
  ),
});

/** The week that a day lies in, at all sites or at one; without a day it is this week. Gaps are of days to come. */
export async function readWeekBoard(
  { db, nowMs }: Pick<Scope, "db" | "nowMs">,
  input: { day: CalendarDay | null; siteId: string | null },
): Promise<z.input<typeof weekBoard>> {
  const firstZone = (await loadAcademyTime(db, { fromMs: nowMs, toMs: nowMs })).names.sites[0]?.zone ?? "UTC";
  const today = dayOf(nowMs, firstZone);
  const monday = mondayOf(input.day ?? today);
  const days = Array.from({ length: 7 }, (_, index) => addDays(monday, index));
  const span = {
    fromMs: instantOf(addDays(monday, -1), 0, "UTC"),
    toMs: instantOf(addDays(monday, 8), 0, "UTC"),
  };
  const whole = await loadAcademyTime(db, span);
  const academy = {
    ...whole,
    sites: whole.sites.filter(({ id }) => input.siteId === null || id === input.siteId),
  };
  const siteIds = academy.sites.map((site) => site.id);
  const cards = (await sessionsBetween(db, span)).filter((card) => siteIds.includes(card.siteId));
  const arms = await armsOf(
    db,
    [...new Set(cards.flatMap((card) => card.athletes.map((one) => one.athleteId)))],
    nowMs,
  );
  const coaches = academy.coaches.map((coach) => ({
    id: coach.id,
    name: academy.names.coaches.find(({ id }) => id === coach.id)?.name ?? "",
    days: days.map((day) => ({
      day,
      sessions: cards
        .filter((card) => card.coachPersonId === coach.id && dayOf(card.startsAtMs, card.zone) === day)
        .map((card) => boardCard(card, day, arms, nowMs)),
      gaps: freeSpans(academy, coach, day)
        .filter((gap) => gap.endMs > nowMs)
        .map((gap) => `${timeInWords(gap.startMs, gap.zone)} to ${timeInWords(gap.endMs, gap.zone)}`),
    })),
  }));
  return { monday, today, days, coaches, sites: whole.names.sites.map(({ id, name }) => ({ id, name })) };
}
