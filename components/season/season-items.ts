import { axisOver, type TimeAxis } from "@/components/charts/time-axis";
import type { TimeLineItem, TimeLineRow } from "@/components/charts/time-line-layout";
import { SESSION_KIND } from "@/server/domain/calendar/session-kind";
import { ROUND_STATE_WORDS } from "@/server/domain/reviews/round-in-words";
import { isEnded, type RoundState } from "@/server/domain/reviews/round-state";
import { MAX_EFFORT } from "@/server/domain/throwing/load-effort";
import { PAIN_KIND_WORDS, THROW_KIND_WORDS } from "@/server/domain/throwing/throw-words";
import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import type { SeasonAnswer, SeasonCorrection, SeasonLinks } from "./season-answer";

/** A whole season as rows and items of one time line, with the axis that holds them. */
export interface SeasonDrawing {
  axis: TimeAxis;
  rows: TimeLineRow[];
  items: TimeLineItem[];
}

/** Throws, outings, pain, rounds, one row for each corrected checkpoint, and sessions, on one axis. */
export function seasonDrawing(season: SeasonAnswer, links: SeasonLinks): SeasonDrawing {
  const items = [
    ...throwItems(season),
    ...outingItems(season),
    ...painItems(season),
    ...roundItems(season, links),
    ...season.corrections.flatMap((correction) => correctionItems(correction, links)),
    ...sessionItems(season, links),
  ];
  const rows = [
    { key: "throws", label: "Throws a week" },
    { key: "outings", label: "Outings" },
    ...(season.pain.reports.length > 0 ? [{ key: "pain", label: "Pain" }] : []),
    { key: "rounds", label: "Rounds" },
    ...correctedCheckpoints(season),
    { key: "sessions", label: "Sessions" },
  ];
  return { axis: axisFor(season, items), rows, items };
}

/** From the month of the first thing recorded, no earlier than the season's first day, to the last one's or today's. */
function axisFor(season: SeasonAnswer, items: readonly TimeLineItem[]): TimeAxis {
  const days = items
    .map((item) => item.startDay)
    .filter((day) => day >= season.sinceDay)
    .sort();
  const first = days[0] ?? season.today;
  const last = [season.today, days.at(-1) ?? season.today].sort().at(-1) ?? season.today;
  return axisOver([first, last]) ?? { startDay: season.sinceDay, endDay: addDays(season.today, 1) };
}

/** Corrected checkpoints as rows: what is open first, then by when it was first given. */
function correctedCheckpoints({ corrections }: SeasonAnswer): TimeLineRow[] {
  const isOpen = ({ state }: SeasonCorrection) => state === "given" || state === "showing";
  const ordered = [...corrections.filter(isOpen), ...corrections.filter((each) => !isOpen(each))];
  const rows = new Map(ordered.map((each) => [each.checkpointId, each.checkpointName]));
  return [...rows].map(([checkpointId, label]) => ({ key: rowKey(checkpointId), label }));
}

const rowKey = (checkpointId: string) => `checkpoint ${checkpointId}`;

function throwItems({ weeks }: SeasonAnswer): TimeLineItem[] {
  return weeks.flatMap(({ weekOf, counts }) => {
    const value = Object.values(counts).reduce((sum, count) => sum + count, 0);
    if (value === 0) return [];
    return [
      {
        id: `week ${weekOf}`,
        row: "throws",
        kind: "bar" as const,
        startDay: weekOf,
        endDay: addDays(weekOf, 7),
        label: `${value} throws`,
        state: "",
        value,
      },
    ];
  });
}

function outingItems({ games, outings }: SeasonAnswer): TimeLineItem[] {
  const mark = { row: "outings", kind: "mark" as const, endDay: null };
  return [
    ...games.map(({ id, thrownOn, kind, pitches }) => ({
      ...mark,
      id,
      startDay: thrownOn,
      label: THROW_KIND_WORDS[kind],
      state: `${pitches} pitches`,
      look: "square" as const,
    })),
    ...outings.map(({ id, plannedOn, pitches }) => ({
      ...mark,
      id,
      startDay: plannedOn,
      label: "Outing planned",
      state: `${pitches} pitches`,
      look: "diamond" as const,
    })),
  ];
}

function painItems({ pain }: SeasonAnswer): TimeLineItem[] {
  const mark = { row: "pain", kind: "mark" as const, endDay: null, state: "" };
  return [
    ...pain.reports.map(({ id, kind, feltOn }) => ({
      ...mark,
      id,
      startDay: feltOn,
      label: PAIN_KIND_WORDS[kind],
      look: "crossed" as const,
    })),
    ...pain.clearances.map(({ id, symptomFreeSince }) => ({
      ...mark,
      id,
      startDay: symptomFreeSince,
      label: "No symptoms since",
      look: "circle" as const,
    })),
  ];
}

function roundItems({ rounds }: SeasonAnswer, links: SeasonLinks): TimeLineItem[] {
  return rounds.map(({ id, state, receivedOn, endedOn }) => ({
    id,
    row: "rounds",
    kind: "span" as const,
    startDay: receivedOn,
    endDay: atLeastADay(receivedOn, endedOn),
    label: "Round",
    state: ROUND_STATE_WORDS[state],
    href: links.round(id),
    look: roundLook(state),
  }));
}

function roundLook(state: RoundState) {
  return isEnded(state) ? ("open" as const) : ("hatched" as const);
}

/** Given is open, showing hatched, held as a solid square on its day; retired ends the line. */
function correctionItems(correction: SeasonCorrection, links: SeasonLinks): TimeLineItem[] {
  const shared = {
    row: rowKey(correction.checkpointId),
    label: correction.checkpointName,
    href: links.round(correction.roundId),
  };
  return correction.spans.flatMap(({ state, fromDay, toDay }): TimeLineItem[] => {
    const id = `${correction.id} ${state} ${fromDay}`;
    if (state === "retired") return [];
    if (state === "held") {
      return [
        { ...shared, id, kind: "mark", startDay: fromDay, endDay: null, state: "held", look: "square" },
      ];
    }
    const look = state === "showing" ? "hatched" : "open";
    return [
      { ...shared, id, kind: "span", startDay: fromDay, endDay: atLeastADay(fromDay, toDay), state, look },
    ];
  });
}

function sessionItems({ sessions }: SeasonAnswer, links: SeasonLinks): TimeLineItem[] {
  return sessions.map((session) => ({
    id: session.id,
    row: "sessions",
    kind: "mark" as const,
    startDay: session.heldOn,
    endDay: null,
    label: SESSION_KIND[session.kind].label,
    state: sessionInWords(session),
    href: links.session(session.id),
    look: session.state === "booked" ? ("circle" as const) : ("stroke" as const),
  }));
}

function sessionInWords({ state, attendance, effort }: SeasonAnswer["sessions"][number]): string {
  if (attendance === "no_show" || state === "no_show") return "did not come";
  if (state === "booked") return "booked";
  return effort === null ? "" : `effort ${effort} of ${MAX_EFFORT}`;
}

/** What began and ended on one day still has the length of that day. */
function atLeastADay(from: CalendarDay, to: CalendarDay | null): CalendarDay | null {
  return to === from ? addDays(from, 1) : to;
}
