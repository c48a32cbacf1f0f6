import { axisOver, type TimeAxis } from "@/components/charts/time-axis";
import type { SpanCap, SpanPart, TimeLineItem, TimeLineRow } from "@/components/charts/time-line-parts";
import { countsInWords } from "@/server/domain/calendar/counted-pitches";
import { SESSION_KIND } from "@/server/domain/calendar/session-kind";
import { DELIVERY_PHASES, PHASE_WORDS, type Phase } from "@/server/domain/mechanics/delivery";
import { ROUND_STATE_WORDS } from "@/server/domain/reviews/round-in-words";
import { isEnded, type RoundState } from "@/server/domain/reviews/round-state";
import { MAX_EFFORT } from "@/server/domain/throwing/load-effort";
import { PAIN_KIND_WORDS, THROW_KIND_WORDS } from "@/server/domain/throwing/throw-words";
import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import type { SeasonAnswer, SeasonCorrection, SeasonLinks } from "./season-answer";

/** A whole season as rows and items of one time line, with the axis that holds them. */
export interface SeasonDrawing {
  axis: TimeAxis;
  rows: TimeLineRow[];
  items: TimeLineItem[];
}

/** Throws, outings, pain, rounds, corrections by phase, and sessions, on one axis. */
export function seasonDrawing(season: SeasonAnswer, links: SeasonLinks): SeasonDrawing {
  const items = [
    ...throwItems(season),
    ...outingItems(season),
    ...painItems(season),
    ...roundItems(season, links),
    ...season.corrections.flatMap((correction) => correctionItem(correction, links)),
    ...sessionItems(season, links),
  ];
  const rows = [
    { key: "throws", label: "Throws a week" },
    { key: "outings", label: "Outings" },
    ...(season.pain.reports.length > 0 ? [{ key: "pain", label: "Pain" }] : []),
    { key: "rounds", label: "Rounds" },
    ...correctedPhases(season).map((phase) => ({
      key: phase,
      label: `Corrections: ${PHASE_WORDS[phase].toLowerCase()}`,
    })),
    { key: "sessions", label: "Sessions" },
  ];
  return { axis: axisFor(season, items), rows, items };
}

/** The phases in which something was corrected, as a delivery runs. */
export function correctedPhases({ corrections }: Pick<SeasonAnswer, "corrections">): Phase[] {
  return DELIVERY_PHASES.filter((phase) => corrections.some((each) => each.phase === phase));
}

/** The rows of one phase's corrections beside all that has no phase; null for every phase. */
export function rowsOfPhase(rows: readonly TimeLineRow[], phase: Phase | null): TimeLineRow[] {
  const others: readonly string[] = DELIVERY_PHASES.filter((each) => phase !== null && each !== phase);
  return rows.filter(({ key }) => !others.includes(key));
}

/** From the month of the first thing recorded to the last one's or today's. */
function axisFor(season: SeasonAnswer, items: readonly TimeLineItem[]): TimeAxis {
  const days = items.map((item) => item.startDay).sort();
  const last = [season.today, days.at(-1) ?? season.today].sort().at(-1) ?? season.today;
  const first = [days[0] ?? season.today, season.today].sort()[0] ?? season.today;
  return axisOver([first, last]) ?? { startDay: season.sinceDay, endDay: addDays(season.today, 1) };
}

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

/**
 * One span from the day it was given to the day it held or was retired: outlined while given, hatched while showing, a
 * thin line while it held before it came back. Its end is a square where it holds, a crossed one where it was retired.
 */
function correctionItem(correction: SeasonCorrection, links: SeasonLinks): TimeLineItem[] {
  const { spans } = correction;
  const [first, last] = [spans[0], spans.at(-1)];
  if (first === undefined || last === undefined) return [];
  const isOver = last.state === "held" || last.state === "retired";
  const worked = isOver ? spans.slice(0, -1) : spans;
  const parts = worked.map(
    ({ state, fromDay, toDay }): SpanPart => ({ fromDay, toDay, look: PART_LOOKS[state] }),
  );
  const caps = spans.flatMap(({ state, fromDay }, index): SpanCap[] => {
    if (state === "held") return [{ day: fromDay, look: "square" }];
    if (state === "retired") return [{ day: fromDay, look: "crossed" }];
    return spans[index - 1]?.state === "held" ? [{ day: fromDay, look: "diamond" }] : [];
  });
  return [
    {
      id: correction.id,
      row: correction.phase,
      kind: "span",
      startDay: first.fromDay,
      endDay: isOver ? atLeastADay(first.fromDay, last.fromDay) : null,
      label: correction.checkpointName,
      state: standsInWords(correction),
      when: spans
        .map(({ state, fromDay }) => `${state} ${dayInWords(fromDay, { withYear: true })}`)
        .join(", "),
      href: links.correction(correction),
      ...{ parts, caps, isLabelled: true },
    },
  ];
}

const PART_LOOKS = { given: "open", showing: "hatched", held: "thin", retired: "open" } as const;

function standsInWords({ state, cameBack }: SeasonCorrection): string {
  if (state === "held" || state === "retired") return state;
  return cameBack
    ? `came back, ${state === "given" ? "still open" : state}`
    : state === "given"
      ? "still open"
      : state;
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

function sessionInWords(session: SeasonAnswer["sessions"][number]): string {
  const { state, attendance, effort } = session;
  if (attendance === "no_show" || state === "no_show") return "did not come";
  if (state === "booked") return "booked";
  const said = effort === null ? [] : [`effort ${effort} of ${MAX_EFFORT}`];
  return [...said, ...countsInWords(session)].join(", ");
}

/** What began and ended on one day still has the length of that day. */
function atLeastADay(from: CalendarDay, to: CalendarDay | null): CalendarDay | null {
  return to === from ? addDays(from, 1) : to;
}
