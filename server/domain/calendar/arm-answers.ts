import {
  type ArmQuestion,
  type PitchesAllowed,
  pitchesAllowed,
} from "@/server/domain/throwing/pitches-allowed";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import type { RoomOn } from "./arm-room";

/** All that is known of the arms of a session, by athlete id. */
export type KnownArms = ReadonlyMap<string, Omit<ArmQuestion, "day">>;

/** What the book says of these arms, worked out once a day. */
export interface ArmAnswers {
  /** @throws RangeError for an athlete who was not given (the caller's fault) */
  on: (athleteId: string, day: CalendarDay) => PitchesAllowed;
  /** The same as far as finding and checking a time needs it. */
  roomOn: RoomOn;
}

/** The rule book's answers for some arms, each asked of it at most once a day. */
export function armAnswers(arms: KnownArms): ArmAnswers {
  const known = new Map<string, PitchesAllowed>();
  const on = (athleteId: string, day: CalendarDay) => {
    const arm = arms.get(athleteId);
    if (arm === undefined) throw new RangeError(`Nothing is known of this arm: ${athleteId}`);
    const key = `${athleteId} ${day}`;
    const answer = known.get(key) ?? pitchesAllowed({ ...arm, day });
    known.set(key, answer);
    return answer;
  };
  return {
    on,
    roomOn: (athleteId, day) => {
      const { status, pitches, firstFreeDay } = on(athleteId, day);
      return { status, pitches, firstFreeDay };
    },
  };
}
