"use client";
import { type RefObject, useEffect, useRef, useState } from "react";
import { isKeyTaken } from "@/components/clips/is-key-taken";
import { showToast } from "@/components/ui/toast";
import type { ClipView, CorrectionView, RoomView } from "@/server/api/reviews/shapes";
import type { Checkpoint } from "@/server/domain/mechanics/checkpoint";
import { DELIVERY_EVENTS, type Phase } from "@/server/domain/mechanics/delivery";
import { isOpen } from "@/server/domain/reviews/correction-state";
import { laidInWords, layTemplate } from "@/server/domain/reviews/review-template";
import { type ClipPlace, marksOn, removeCorrection, removeKeep } from "./room-edits";
import type { LineChoice, LineFacts } from "./room-line-choices";
import { offered } from "./room-recap";
import {
  keepInWords,
  type RoomPlaces,
  type Said,
  type SayingKind,
  sayOf,
  showAgain,
  showAllAgain,
  shownInWords,
} from "./room-saying";
import type { RoomDraft } from "./use-room-draft";
import { useRowInHand } from "./use-row-in-hand";

/** What {@link useSaying} takes. */
export interface SayingPlace {
  room: RoomView;
  clips: readonly ClipView[];
  draft: RoomDraft<"review">;
  clip: ClipView;
  /** The frame on the picture. */
  place: ClipPlace;
  phase: Phase | null;
  setPhase: (phase: Phase) => void;
}

/** The ways to say something in the room, each by key and by press. */
export interface Saying {
  roundId: string;
  /** The line's field and what it asks for. */
  line: RefObject<HTMLInputElement | null>;
  kind: SayingKind;
  setKind: (kind: SayingKind) => void;
  facts: LineFacts;
  /** Why the last choice could not be put on the slip; empty when it was. */
  problem: string;
  choose: (choice: LineChoice, kind: SayingKind) => void;
  say: (kind: SayingKind, checkpoint: Checkpoint) => void;
  /** A keep of no checkpoint; it may still be empty. */
  keepInWords: (text: string) => void;
  open: readonly CorrectionView[];
  showAgain: (correction: CorrectionView) => void;
  showAllAgain: () => void;
  templates: RoomView["templates"];
  lay: (template: RoomView["templates"][number]) => void;
  templateButtons: RefObject<HTMLDivElement | null>;
}

/** Writes on the slip from what is on the picture: a checkpoint by its line, what is open from before, a usual review. */
export function useSaying(at: SayingPlace): Saying {
  const { room, clips, draft, clip, place, phase, setPhase } = at;
  const { document, change } = draft;
  const line = useRef<HTMLInputElement>(null);
  const templateButtons = useRef<HTMLDivElement>(null);
  const [kind, setKind] = useState<SayingKind>("correction");
  const [problem, setProblem] = useState("");
  const take = useRowInHand();
  const open = room.corrections.filter((each) => isOpen(each.state));
  const checkpoints = offered(room.checkpoints, document);
  const newId = () => crypto.randomUUID();
  const saidFacts = { open, maxOpen: room.maxOpen, newId };
  const places: RoomPlaces = { checkpoints: room.checkpoints, clips: markedClips(at), inSight: place };

  const put = (said: Said) => {
    setProblem("problem" in said ? said.problem : "");
    if ("problem" in said) return;
    change(() => said.document);
    take(said.inHand);
  };
  const say = (what: SayingKind, checkpoint: Checkpoint) => {
    setPhase(checkpoint.phase);
    put(sayOf(document, what, checkpoint, place, saidFacts));
  };

  const keepOwn = (text: string) =>
    put(keepInWords(document, { checkpointId: null, phase: phase ?? "wind_up", text }, place, saidFacts));

  const saying: Saying = {
    roundId: room.round.id,
    ...{ line, kind, setKind, problem, say, open, templateButtons, keepInWords: keepOwn },
    facts: {
      checkpoints,
      now: { view: clip.view, phase, events: eventsOn(places, place) },
      ...{ document, open },
    },
    choose: (choice, what) => {
      if (choice.isOff) setProblem(`${choice.words} is ${choice.facts}.`);
      else if (choice.checkpoint) say(what, choice.checkpoint);
      else keepOwn(choice.words);
    },
    showAgain: (correction) => {
      change((now) => showAgain(now, correction, place));
      take(correction.id);
    },
    showAllAgain: () => {
      const shown = showAllAgain(document, open, places);
      change(() => shown.document);
      showToast({ text: shownInWords(shown, open.length) });
    },
    templates: room.templates,
    lay: (template) => {
      const openCheckpointIds = open.map((each) => each.checkpointId);
      const given = { ...places, checkpoints: checkpoints.filter((each) => each.active) };
      const laid = layTemplate(document, template.lines, {
        ...{ ...given, openCheckpointIds, maxOpen: room.maxOpen, newId },
      });
      change(() => laid.document);
      const before = new Set([...document.corrections, ...document.keeps].map((row) => row.id));
      const added = [...laid.document.corrections, ...laid.document.keeps].filter(
        (row) => !before.has(row.id),
      );
      const takeOff = () =>
        change((now) => added.reduce((rest, { id }) => removeKeep(removeCorrection(rest, id), id), now));
      showToast({
        text: laidInWords(laid),
        ...(added.length > 0 ? { actionText: "Take them off", onAction: takeOff } : {}),
      });
    },
  };
  useSayingKeys(saying);
  return saying;

  function markedClips({ draft: { document: written } }: SayingPlace) {
    return clips.map(({ id, view }) => ({
      ...{ id, view },
      marks: marksOn(id, room.eventMarks, written.eventMarks),
    }));
  }
}

function eventsOn({ clips }: RoomPlaces, { clipId, frame }: ClipPlace) {
  const marks = clips.find((each) => each.id === clipId)?.marks ?? {};
  return DELIVERY_EVENTS.filter((event) => marks[event] === frame);
}

/** The keys that write, in words. */
export const SAYING_KEYS = [
  ["C", "correct what you see: type two letters, Enter"],
  ["G", "keep what is good: type two letters, Enter"],
  ["Shift Enter", "the other of the two, in the line"],
  ["↓ ↑", "the usual words, in an empty field"],
  ["Alt 1 to 6", "one of the usual words, in its field"],
  ["Tab", "from the cue to the drill"],
  ["Enter", "back to the clip"],
  ["U", "show again all that is open from before"],
  ["T", "the usual review of this age"],
  ["Ctrl Enter", "send; once more when it is asked"],
] as const;

function useSayingKeys(saying: Saying): void {
  const latest = useRef(saying);
  latest.current = saying;
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (isKeyTaken(event) || !pressed(event.key.toLowerCase(), latest.current)) return;
      event.preventDefault();
    };
    window.addEventListener("keydown", listen);
    return () => window.removeEventListener("keydown", listen);
  }, []);
}

function pressed(key: string, saying: Saying): boolean {
  const ask = (kind: SayingKind) => {
    saying.setKind(kind);
    saying.line.current?.focus();
  };
  const acts = new Map<string, () => void>([
    ["c", () => ask("correction")],
    ["g", () => ask("keep")],
    ["u", saying.showAllAgain],
    ["t", () => useUsual(saying)],
  ]);
  const act = acts.get(key);
  act?.();
  return act !== undefined;
}

/** The only usual review is laid at once; of several the first is pointed at. */
function useUsual({ templates, lay, templateButtons }: Saying): void {
  const [only, ...others] = templates;
  if (only && others.length === 0) lay(only);
  else templateButtons.current?.querySelector("button")?.focus();
}
