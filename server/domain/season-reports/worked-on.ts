import type { Phase } from "@/server/domain/mechanics/delivery";
import {
  type CorrectionEvent,
  type CorrectionStanding,
  type CorrectionState,
  isOpen,
  standingOf,
} from "@/server/domain/reviews/correction-state";
import { addDays, type CalendarDay, dayOf, instantOf } from "@/server/domain/time/calendar-day";
import type { SeasonSpan } from "./season-span";

/** A correction as it is on record: what happened to it, oldest first, and when its drill was practised. */
export interface RecordedCorrection {
  id: string;
  checkpointName: string;
  phase: Phase;
  cue: string;
  happenings: readonly CorrectionEvent[];
  practisedOn: readonly CalendarDay[];
}

/** What a season made of a correction. */
export interface WorkedOn {
  id: string;
  checkpointName: string;
  phase: Phase;
  cue: string;
  givenOn: CalendarDay;
  /** At the end of the span, or now while it runs. */
  state: CorrectionState;
  /** The last day of the span on which it came to hold, and on which it came back after it had held; null for none. */
  heldOn: CalendarDay | null;
  cameBackOn: CalendarDay | null;
  /** Days of the span on which its drill was ticked. */
  practiceDays: number;
}

/**
 * The corrections that were open on some day of a span, in the order given, each as it stood when the span ended. What
 * happened later is left out, so that a report of a past season says what could be said then.
 * @param zone the home site's, by whose clock days begin
 */
export function workedOn(
  corrections: readonly RecordedCorrection[],
  span: SeasonSpan,
  zone: string,
): WorkedOn[] {
  const [fromMs, toMs] = [instantOf(span.fromOn, 0, zone), instantOf(addDays(span.toOn, 1), 0, zone)];
  return corrections.flatMap(({ id, checkpointName, phase, cue, happenings, practisedOn }) => {
    const events = happenings.filter(({ atMs }) => atMs < toMs);
    const given = events[0];
    if (given === undefined) return [];
    const { state, history } = standingOf(events);
    if (!wasOpenSince(history, fromMs)) return [];
    const steps = stepsSince(history, fromMs);
    const dayOfLast = (kind: Step["kind"]) => {
      const last = steps.findLast((step) => step.kind === kind);
      return last ? dayOf(last.atMs, zone) : null;
    };
    return [
      {
        ...{ id, checkpointName, phase, cue, state },
        givenOn: dayOf(given.atMs, zone),
        heldOn: dayOfLast("held"),
        cameBackOn: dayOfLast("came_back"),
        practiceDays: practisedOn.filter((day) => day >= span.fromOn && day <= span.toOn).length,
      },
    ];
  });
}

interface Step {
  kind: "held" | "came_back" | "other";
  atMs: number;
}

/** A state holds until the next begins: an open one that began before counts when it lasted into the span. */
function wasOpenSince(history: CorrectionStanding["history"], fromMs: number): boolean {
  return history.some(
    ({ state }, index) => isOpen(state) && (history[index + 1]?.fromMs ?? Number.POSITIVE_INFINITY) > fromMs,
  );
}

function stepsSince(history: CorrectionStanding["history"], fromMs: number): Step[] {
  const steps = history.map(({ state, fromMs: atMs }, index): Step => {
    const cameBack = state === "given" && history[index - 1]?.state === "held";
    return { kind: cameBack ? "came_back" : state === "held" ? "held" : "other", atMs };
  });
  return steps.filter(({ atMs }) => atMs >= fromMs);
}
