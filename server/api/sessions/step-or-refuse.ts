import {
  type SessionAct,
  type SessionStanding,
  type SessionState,
  stepSession,
} from "@/server/domain/calendar/session-state";
import { Refusal } from "@/server/domain/errors/refusal";

/** The state an act leads to. @throws Refusal when the act does not fit the session now */
export function stepOrRefuse(session: SessionStanding, act: SessionAct, nowMs: number): SessionState {
  const step = stepSession(session, act, nowMs);
  if (!step.ok) throw new Refusal(step.refusal);
  return step.state;
}
