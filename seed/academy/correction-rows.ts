import {
  type CorrectionEvent,
  type CorrectionEventKind,
  givenAt,
  isOpen,
  moveCorrection,
} from "@/server/domain/reviews/correction-state";
import type { Random } from "../seeded-random";
import type { SeenClip } from "./clip-rows";
import type { Theme, TrackedCorrection } from "./themes";
import { keepRemark, type World } from "./world";

/** Where and by whom something happened to a correction. */
export interface Seen {
  actorId: string;
  atMs: number;
  roundId?: string;
  sessionId?: string;
  clip?: SeenClip;
  words?: string;
}

/** The themes whose correction the athlete still works on. */
export function openThemes(themes: readonly Theme[]): Theme[] {
  return themes.filter(({ correction }) => correction !== null && isOpen(correction.standing.state));
}

/** A correction as a review gives it. `position` is its place in the recap, from 0. */
export interface NewCorrection {
  theme: Theme;
  athleteId: string;
  reviewId: string;
  roundId: string;
  clip: SeenClip;
  position: number;
}

/** Gives a correction on a theme; its cue and drill are the checkpoint's own. */
export function giveCorrection(world: World, given: NewCorrection, seen: Seen, random: Random): void {
  const { theme, clip, athleteId, reviewId, roundId, position } = given;
  const { checkpoint } = theme;
  const row: TrackedCorrection["row"] = {
    ...{ id: world.id("cor"), athleteId, reviewId, roundId, checkpointId: checkpoint.id },
    ...{ phase: checkpoint.phase, cue: random.pick(checkpoint.cues), drill: random.pick(checkpoint.drills) },
    ...{ clipId: clip.id, frame: clip.frames[checkpoint.event], position },
    ...{ state: "given", cameBack: false, givenAtMs: seen.atMs, closedAtMs: null },
  };
  world.rows.correction.push(row);
  const first: CorrectionEvent = { kind: "given", atMs: seen.atMs, reason: "" };
  theme.correction = { row, standing: givenAt(seen.atMs), events: [first] };
  writeEvent(world, theme, "given", { ...seen, clip });
}

/**
 * What happens to a theme's correction, by the domain's own rule, in the record and on its row.
 * @throws RangeError when it cannot happen
 */
export function moveTheme(world: World, theme: Theme, kind: CorrectionEventKind, seen: Seen): void {
  const { correction } = theme;
  if (!correction) throw new RangeError("There is no correction to move.");
  const event = { kind, atMs: seen.atMs, reason: seen.words ?? "" };
  const move = moveCorrection(correction.standing, event);
  if (!move.ok) throw new RangeError(`${kind}: ${move.refusal}`);
  correction.standing = move.standing;
  correction.events.push(event);
  const { state, cameBack } = move.standing;
  const closedAtMs = isOpen(state) ? null : (correction.row.closedAtMs ?? seen.atMs);
  Object.assign(correction.row, { state, cameBack, closedAtMs });
  writeEvent(world, theme, kind, seen);
}

function writeEvent(world: World, theme: Theme, kind: CorrectionEventKind, seen: Seen): void {
  const { actorId: actorPersonId, atMs, roundId = null, sessionId = null, clip, words } = seen;
  world.rows.correctionEvent.push({
    ...{ id: world.id("cev"), correctionId: theme.correction?.row.id ?? "", kind, roundId, sessionId },
    ...{ clipId: clip?.id ?? null, frame: clip ? clip.frames[theme.checkpoint.event] : null },
    ...{ remarkId: words ? keepRemark(world, words) : null, actorPersonId, atMs },
  });
}
