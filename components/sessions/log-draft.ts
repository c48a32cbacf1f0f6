import type { Answers } from "@/components/wire/answers";
import { type CountedPitches, countProblems, UNCOUNTED } from "@/server/domain/calendar/counted-pitches";
import type { SpeedUnit } from "@/server/domain/calendar/radar-speed";
import { throwsOnMound } from "@/server/domain/calendar/session-kind";
import type { Attendance, WorkOutcome } from "@/server/domain/calendar/session-state";

type View = Answers["sessions"]["forStaff"];

/** One athlete's line while it is being written; numbers are null while they are missing. */
export interface LineDraft extends Omit<CountedPitches, "speedUnit"> {
  attendance: Attendance;
  minutes: number | null;
  pitches: number | null;
  /** 0 to 10, the athlete's own word; null when it was not asked. */
  effort: number | null;
  /** What a speed is read in once there is one. */
  speedUnit: SpeedUnit;
  work: Readonly<Record<string, WorkOutcome>>;
  note: string;
}

/** A line for each athlete to begin with: the planned length; the pitches are to be counted, never taken for granted. */
export function firstDraft({ head, athletes }: Pick<View, "head" | "athletes">): Record<string, LineDraft> {
  const minutes = Math.round((head.endsAtMs - head.startsAtMs) / 60_000);
  const pitches = throwsOnMound(head.kind) ? null : 0;
  return Object.fromEntries(
    athletes.map(({ athleteId }) => [
      athleteId,
      {
        ...{ attendance: "came" as const, minutes, pitches, effort: null },
        ...{ strikes: null, topSpeed: null, speedUnit: "mph" as const, work: {}, note: "" },
      },
    ]),
  );
}

/** What is missing or cannot be before the log can be sent, by athlete; nothing when it is whole. */
export function missingIn(
  drafts: Readonly<Record<string, LineDraft>>,
  athletes: readonly { athleteId: string; givenName: string }[],
): Record<string, string> {
  const missing = athletes.flatMap(({ athleteId, givenName }) => {
    const draft = drafts[athleteId];
    if (!draft || draft.attendance === "no_show") return [];
    return [
      ...miscounted(draft).map(({ count, why }) => [`${count}-${athleteId}`, why]),
      ...(draft.minutes === null ? [[`minutes-${athleteId}`, `Say how long ${givenName} was here.`]] : []),
      ...(draft.pitches === null
        ? [[`pitches-${athleteId}`, `Say how many pitches ${givenName} threw, 0 for none.`]]
        : []),
    ];
  });
  return Object.fromEntries(missing);
}

const NOTHING = { minutes: 0, pitches: 0, effort: null, ...UNCOUNTED };

const miscounted = (draft: LineDraft) =>
  draft.pitches === null ? [] : countProblems(draft.pitches, countsOf(draft));

/** What was counted, as the log takes it: without a speed there is no unit. */
function countsOf({ strikes, topSpeed, speedUnit }: LineDraft): CountedPitches {
  return { strikes, topSpeed, speedUnit: topSpeed === null ? null : speedUnit };
}

/** The lines as the log takes them. Who stayed away has nothing to log. */
export function linesOf(drafts: Readonly<Record<string, LineDraft>>) {
  return Object.entries(drafts).map(([athleteId, draft]) => {
    const { attendance, note } = draft;
    if (attendance === "no_show") {
      return { athleteId, attendance, note, ...NOTHING, work: [] };
    }
    const work = Object.entries(draft.work).map(([correctionId, outcome]) => ({ correctionId, outcome }));
    const { minutes, pitches, effort } = draft;
    return {
      ...{ athleteId, attendance, note, minutes: minutes ?? 0, pitches: pitches ?? 0, effort },
      ...{ ...countsOf(draft), work },
    };
  });
}
