import { roomAddress } from "@/components/reviews/room-address";
import type { ArmAnswer, PainAnswer } from "@/components/throwing/arm-answer";
import type { CountedPitches } from "@/server/domain/calendar/counted-pitches";
import type { SessionKind } from "@/server/domain/calendar/session-kind";
import type { Attendance, SessionState } from "@/server/domain/calendar/session-state";
import type { CheckpointChange } from "@/server/domain/mechanics/checkpoint-changes";
import type { CameraView, Phase } from "@/server/domain/mechanics/delivery";
import type { CorrectionSpan } from "@/server/domain/reviews/correction-spans";
import type { CorrectionState } from "@/server/domain/reviews/correction-state";
import type { RoundState } from "@/server/domain/reviews/round-state";
import type { ThrowKind } from "@/server/domain/throwing/throw-entry";
import type { WeekOfThrows } from "@/server/domain/throwing/throws-by-week";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

/** A season as `athletes.season` answers it: everything that was recorded, judgements of twelve months. */
export interface SeasonAnswer {
  athlete: {
    athleteId: string;
    givenName: string;
    name: string;
    ageYears: number;
    throws: "right" | "left";
    siteName: string;
    coachName: string | null;
  };
  today: CalendarDay;
  sinceDay: CalendarDay;
  maxOpenCorrections: number;
  hasConsent: boolean;
  arm: ArmAnswer;
  pain: PainAnswer;
  rounds: readonly { id: string; state: RoundState; receivedOn: CalendarDay; endedOn: CalendarDay | null }[];
  corrections: readonly SeasonCorrection[];
  judged: readonly JudgedCheckpoint[];
  sessions: readonly (CountedPitches & {
    id: string;
    kind: SessionKind;
    state: SessionState;
    attendance: Attendance | null;
    effort: number | null;
    heldOn: CalendarDay;
    coachName: string;
  })[];
  games: readonly { id: string; thrownOn: CalendarDay; kind: ThrowKind; pitches: number }[];
  outings: readonly { id: string; plannedOn: CalendarDay; pitches: number }[];
  weeks: readonly WeekOfThrows[];
  changes: {
    /** How many were looked at together, and how many changed. */
    words: readonly string[];
    all: readonly (Omit<CheckpointChange, "correctionId"> & {
      checkpointId: string;
      checkpointName: string;
      phase: Phase;
      roundId: string;
      givenOn: CalendarDay;
    })[];
  };
}

/** A correction and how it went. */
export interface SeasonCorrection {
  id: string;
  roundId: string;
  /** The frame it was given on, counted from 0; both null where it was given without one. */
  clipId: string | null;
  frame: number | null;
  checkpointId: string;
  checkpointName: string;
  phase: Phase;
  cue: string;
  state: CorrectionState;
  cameBack: boolean;
  givenOn: CalendarDay;
  spans: readonly CorrectionSpan[];
}

/** A checkpoint and every judgement of it, earliest first. */
export interface JudgedCheckpoint {
  checkpointId: string;
  name: string;
  phase: Phase;
  judgements: readonly {
    id: string;
    judgedOn: CalendarDay;
    view: CameraView | null;
    score: number;
    coachName: string;
  }[];
}

/** Where the links of a season lead: staff and families have screens of their own. */
export interface SeasonLinks {
  round: (roundId: string) => string;
  /** To the frame a correction was given on. */
  correction: (correction: Pick<SeasonCorrection, "roundId" | "clipId" | "frame">) => string;
  /** To what can be told since a correction. */
  evidence: (correction: Pick<SeasonCorrection, "roundId" | "checkpointId">) => string;
  session: (sessionId: string) => string;
  throws: string;
}

/** The links of a season for one side of the house. */
export function seasonLinks(side: "staff" | "family", athleteId: string): SeasonLinks {
  const family = `/family/${athleteId}`;
  return side === "staff"
    ? {
        round: (id) => `/reviews/${id}`,
        correction: ({ roundId, clipId, frame }) =>
          clipId === null ? `/reviews/${roundId}` : roomAddress({ roundId, clipId, frame }),
        evidence: ({ checkpointId }) => `/athletes/${athleteId}/checkpoints/${checkpointId}`,
        session: (id) => `/calendar/${id}`,
        throws: `/athletes/${athleteId}/throws`,
      }
    : {
        round: (id) => `${family}/rounds/${id}`,
        correction: ({ roundId }) => `${family}/rounds/${roundId}`,
        evidence: ({ roundId }) => `${family}/rounds/${roundId}`,
        session: (id) => `${family}/sessions/${id}`,
        throws: `${family}/throws`,
      };
}
