import { EVENT_WORDS, eventOrder } from "@/server/domain/mechanics/delivery";
import type { CheckDraft, EventMark, ReviewDraft } from "./draft";
import { asTheDeliveryRuns, countInWords } from "./recap";
import { verdictsMissing } from "./round-state";

/** A clip of the round, by the number of its frames; they are counted from 0. */
export interface ClipFrames {
  id: string;
  frameCount: number;
}

/** What a review is held against. `openCount` leaves out the corrections of the draft itself. */
export interface SendingFacts {
  openCount: number;
  max: number;
  clips: readonly ClipFrames[];
}

/** What a check is held against: the athlete's corrections by whether they are open or have held. */
export interface SettlingFacts {
  openIds: readonly string[];
  heldIds: readonly string[];
  clips: readonly ClipFrames[];
}

/**
 * What a review still needs before it can be sent, as fragments to be joined into one sentence; empty when it is
 * ready. Corrections are numbered as the recap will number them. A drill may stay empty, a cue may not.
 */
export function missingToSend(draft: ReviewDraft, facts: SendingFacts): string[] {
  return [
    ...nothingSaid(draft),
    ...wordsMissing(draft),
    ...tooManyOpen(draft.corrections.length, facts),
    ...badFrames(
      [...draft.eventMarks, ...draft.judgements, ...draft.keeps, ...draft.corrections, ...draft.shownAgain],
      facts.clips,
    ),
    ...badFrames(placed(draft), facts.clips),
    ...marksOutOfOrder(draft.eventMarks),
  ];
}

/**
 * What a check still needs before it settles the round; empty when it is ready. Every open correction needs a verdict
 * or a retirement with its reason; one that has held may be judged again or left alone.
 */
export function missingToSettle(draft: CheckDraft, facts: SettlingFacts): string[] {
  const judged = draft.verdicts.filter((row) => row.verdict !== null).map((row) => row.correctionId);
  const retired = draft.retirements.map((row) => row.correctionId);
  const known = new Set([...facts.openIds, ...facts.heldIds]);
  const waiting = facts.openIds.filter((id) => !judged.includes(id) && !retired.includes(id)).length;
  return [
    ...when(waiting > 0, verdictsMissing(waiting)),
    ...when(
      judged.some((id) => !known.has(id)) || retired.some((id) => !facts.openIds.includes(id)),
      "a verdict names a correction that is not open any more",
    ),
    ...when(
      retired.some((id) => judged.includes(id)),
      "a correction cannot be retired and given a verdict at once",
    ),
    ...when(
      draft.retirements.some((row) => row.reason.trim() === ""),
      "say why a correction is no longer wanted",
    ),
    ...badFrames([...draft.eventMarks, ...draft.judgements, ...draft.verdicts], facts.clips),
    ...badFrames(placed(draft), facts.clips),
    ...marksOutOfOrder(draft.eventMarks),
  ];
}

function nothingSaid(draft: ReviewDraft): string[] {
  const said = draft.keeps.length + draft.corrections.length + draft.shownAgain.length;
  return when(said === 0, "name at least one keep or correction");
}

function wordsMissing(draft: ReviewDraft): string[] {
  const cues = asTheDeliveryRuns(draft.corrections).flatMap((correction, index) =>
    when(correction.cue.trim() === "", `write the cue of correction ${index + 1}`),
  );
  const keeps = asTheDeliveryRuns(draft.keeps).flatMap((keep, index) =>
    when(keep.text.trim() === "", `say what to keep in keep ${index + 1}`),
  );
  return [...cues, ...keeps];
}

function tooManyOpen(added: number, facts: SendingFacts): string[] {
  const over = facts.openCount + added - facts.max;
  return when(
    added > 0 && over > 0,
    `leave out ${countInWords(Math.min(over, added))}: ${facts.openCount} open already and ${facts.max} is the most at a time`,
  );
}

/** Every frame that a measure or a mark names. */
function placed({ measures, marks }: Pick<ReviewDraft, "measures" | "marks">): Seen[] {
  return [
    ...measures.flatMap(({ clipId, frame, untilFrame, points }) =>
      [frame, untilFrame ?? frame, ...points.map((point) => point.frame)].map((each) => ({
        clipId,
        frame: each,
      })),
    ),
    ...marks.map(({ clipId, frame, untilFrame }) => ({ clipId, frame: untilFrame ?? frame })),
  ];
}

type Seen = { clipId: string | null; frame: number | null };

function badFrames(rows: readonly Seen[], clips: readonly ClipFrames[]): string[] {
  const complaints = rows.flatMap((row) => frameComplaint(row, clips));
  return [...new Set(complaints)];
}

function frameComplaint({ clipId, frame }: Seen, clips: readonly ClipFrames[]): string[] {
  if (clipId === null && frame === null) return [];
  if (clipId === null || frame === null) return ["a frame and its clip go together: mark both or neither"];
  const clip = clips.find((one) => one.id === clipId);
  if (clip === undefined) return ["something is marked on a clip that is not in this round"];
  return when(
    frame >= clip.frameCount,
    `frame ${frame + 1} is marked on a clip of ${clip.frameCount} frames`,
  );
}

function marksOutOfOrder(marks: readonly EventMark[]): string[] {
  const inOrder = [...marks].sort((a, b) => eventOrder(a.event) - eventOrder(b.event));
  return inOrder.flatMap((mark, index) => {
    const before = inOrder.slice(0, index).findLast((earlier) => earlier.clipId === mark.clipId);
    return when(
      before !== undefined && before.frame > mark.frame,
      `${EVENT_WORDS[mark.event].toLowerCase()} is marked before ${before ? EVENT_WORDS[before.event].toLowerCase() : ""}`,
    );
  });
}

function when(missing: boolean, fragment: string): string[] {
  return missing ? [fragment] : [];
}
