import { z } from "zod";
import { armsOf } from "@/server/data/arms";
import { type ArmOfBoard, armsForBoard } from "@/server/data/arms-board";
import { boardChoices } from "@/server/data/board-choices";
import { fullName } from "@/server/domain/people/person";
import { type BoardCell, bySoonestLimit, encodeCells } from "@/server/domain/throwing/board-cell";
import { boardCells, boardDaysAround } from "@/server/domain/throwing/board-row";
import { pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { dayOf } from "@/server/domain/time/calendar-day";
import type { Scope } from "./context";

/** How many arms a page of the board holds: 29 days of each are about as many cells as a phone draws at once. */
const PAGE_SIZE = 40;

/** Which arms, in which order, and which page of them; null stands for all. */
export const armsBoardInput = z.strictObject({
  coach: z.string().min(1).max(60).nullable(),
  team: z.string().min(1).max(80).nullable(),
  site: z.string().min(1).max(60).nullable(),
  order: z.enum(["limit", "name"]),
  page: z.int().min(1).max(1000),
});

const choice = z.strictObject({ id: z.string(), name: z.string() });

/** Athletes by days. A page beyond the last is the last. */
export const armsBoardView = z.strictObject({
  today: z.string(),
  fromDay: z.string(),
  dayCount: z.int(),
  /** How many arms there are on all pages. */
  total: z.int(),
  page: z.int(),
  pageSize: z.int(),
  rows: z.array(
    z.strictObject({
      athleteId: z.string(),
      name: z.string(),
      /** One short text for all days, read by `decodeCells`. */
      cells: z.string(),
      /** The last day anything was reported, when that is so long ago that one should ask. */
      unreportedSince: z.string().nullable(),
    }),
  ),
  coaches: z.array(choice),
  teams: z.array(z.string()),
  sites: z.array(choice),
});

/** Reads the board and decides every arm of it; only the page asked for is answered. */
export async function armsBoardFor(
  scope: Pick<Scope, "db" | "nowMs">,
  input: z.output<typeof armsBoardInput>,
): Promise<z.output<typeof armsBoardView>> {
  const { db, nowMs } = scope;
  const { coaches, teams, sites } = await boardChoices(db);
  const today = dayOf(nowMs, (sites.find((site) => site.id === input.site) ?? sites[0])?.zone ?? "UTC");
  const days = boardDaysAround(today);
  const fromDay = days[0] ?? today;
  const filter = { coachPersonId: input.coach, siteId: input.site, team: input.team };
  const arms = (await armsForBoard(db, filter, { nowMs, fromDay })).map((arm) => ({
    arm,
    cells: boardCells(arm.question, days),
  }));
  const ordered = inOrder(arms, input.order, days.indexOf(today));
  const page = Math.min(input.page, Math.max(1, Math.ceil(ordered.length / PAGE_SIZE)));
  const shown = ordered.slice((page - 1) * PAGE_SIZE, page * PAGE_SIZE);
  return {
    ...{ today, fromDay, dayCount: days.length, total: ordered.length, page, pageSize: PAGE_SIZE },
    rows: await withSilence(scope, shown),
    ...{ coaches, teams, sites: sites.map(({ id, name }) => ({ id, name })) },
  };
}

interface Decided {
  arm: ArmOfBoard;
  cells: BoardCell[];
}

/** The arms come by name, and keep that order where their limits come equally soon. */
function inOrder(arms: readonly Decided[], order: "limit" | "name", today: number): readonly Decided[] {
  return order === "name" ? arms : arms.toSorted((a, b) => bySoonestLimit(a.cells, b.cells, today));
}

/** Silence is a matter of the arms that are shown, so only theirs is looked up. */
async function withSilence({ db, nowMs }: Pick<Scope, "db" | "nowMs">, shown: readonly Decided[]) {
  const ids = shown.map(({ arm }) => arm.athleteId);
  const known = await armsOf(db, ids, nowMs);
  return shown.map(({ arm, cells }) => {
    const own = known.get(arm.athleteId);
    const unreportedSince = own ? pitchesAllowed({ ...own, day: own.today }).nothingReportedSince : null;
    return { athleteId: arm.athleteId, name: fullName(arm), cells: encodeCells(cells), unreportedSince };
  });
}
