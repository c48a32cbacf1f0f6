import { describe, expect, it } from "vitest";
import { addKeep } from "@/components/reviews/room-edits";
import { type LineFacts, lineChoices } from "@/components/reviews/room-line-choices";
import { type PhraseKey, phraseAct } from "@/components/reviews/room-phrases";
import {
  changeShownAgain,
  keepInWords,
  type SayingFacts,
  sayOf,
  showAgain,
  showAllAgain,
  shownInWords,
  takeShownAgainBack,
} from "@/components/reviews/room-saying";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import { DRAFT_LIMITS, EMPTY_REVIEW_DRAFT, reviewDraftSchema } from "@/server/domain/reviews/draft";
import { correction, keep, many, review } from "../../helpers/review-drafts";

const place = { clipId: "side", frame: 7 };
const facts: SayingFacts = { open: [], maxOpen: 5, newId: () => "new" };

function named(id: string) {
  const found = STARTING_LIBRARY.find((each) => each.id === id);
  if (!found) throw new Error(`There is no ${id}.`);
  return found;
}
const hips = named("hips-lead");
const gaze = named("gaze-on-plate");

describe("saying something of a checkpoint", () => {
  it("puts a correction on the slip, on the frame in sight, its cue still to be written", () => {
    const said = sayOf(EMPTY_REVIEW_DRAFT, "correction", hips, place, facts);
    expect(said).toMatchObject({ inHand: "new" });
    const document = "document" in said ? said.document : EMPTY_REVIEW_DRAFT;
    expect(reviewDraftSchema.parse(document).corrections).toMatchObject([
      { id: "new", checkpointId: "hips-lead", phase: "stride", cue: "", ...place },
    ]);
  });

  it("names a strength in its usual words, on the frame in sight", () => {
    const said = sayOf(EMPTY_REVIEW_DRAFT, "keep", hips, place, facts);
    expect(said).toMatchObject({
      document: { keeps: [{ checkpointId: "hips-lead", text: hips.clearLooksLike, ...place }] },
    });
  });

  it("takes what is on the slip already in hand again, and changes nothing", () => {
    const written = review({ corrections: [correction()], keeps: [keep({ checkpointId: "hips-lead" })] });
    expect(sayOf(written, "correction", hips, place, facts)).toEqual({ document: written, inHand: "c1" });
    expect(sayOf(written, "keep", hips, place, facts)).toEqual({ document: written, inHand: "k1" });
  });

  it("shows what is open from before again and gives it no second time, even on a full slip", () => {
    const open = many(5, (index) => ({
      ...{ id: `old-${index}`, state: "given" as const },
      checkpointId: index === 0 ? "hips-lead" : "x",
    }));
    const said = sayOf(EMPTY_REVIEW_DRAFT, "correction", hips, place, { ...facts, open });
    expect(said).toMatchObject({
      inHand: "old-0",
      document: { corrections: [], shownAgain: [{ correctionId: "old-0", verdict: "not_yet", ...place }] },
    });
  });

  it("refuses one more than the most, in words", () => {
    const open = many(3, (index) => ({
      ...{ id: `old-${index}`, state: "given" as const, checkpointId: "x" },
    }));
    const full = review({
      corrections: many(2, (index) => correction({ id: `c${index}`, checkpointId: "x" })),
    });
    expect(sayOf(full, "correction", hips, place, { ...facts, open })).toEqual({
      problem: "5 is the most at a time, and 3 are open already.",
    });
    expect(sayOf(full, "keep", hips, place, { ...facts, open })).toHaveProperty("document");
  });

  it("refuses a keep more than a review holds", () => {
    const own = { checkpointId: null, phase: "stride" as const, text: "Good" };
    const full = many(DRAFT_LIMITS.keeps, (index) => `k${index}`).reduce(
      (now, id) => addKeep(now, own, place, id),
      EMPTY_REVIEW_DRAFT,
    );
    expect(keepInWords(full, own, place, facts)).toEqual({ problem: "12 keeps are the most." });
  });
});

describe("what is open from before", () => {
  const open = [
    { id: "old-hips", checkpointId: "hips-lead", checkpointName: "Hips lead", state: "given" as const },
    {
      ...{ id: "old-gaze", checkpointId: "gaze-on-plate", state: "showing" as const },
      checkpointName: "Gaze level and on the plate",
    },
  ];
  const places = {
    checkpoints: STARTING_LIBRARY,
    clips: [{ id: "side", view: "open_side" as const, marks: { [hips.event]: 40 } }],
    inSight: place,
  };

  it("is shown by one key, each on the frame of its moment and left where it stands, once however often it is pressed", () => {
    const shown = showAllAgain(EMPTY_REVIEW_DRAFT, open, places);
    expect(shown.document.shownAgain).toEqual([
      { correctionId: "old-hips", verdict: "not_yet", note: "", clipId: "side", frame: 40 },
      { correctionId: "old-gaze", verdict: "partly", note: "", ...place },
    ]);
    expect(shown).toMatchObject({ added: 2, unseen: [] });
    const twice = showAllAgain(shown.document, open, places);
    expect(twice).toEqual({ document: shown.document, added: 0, unseen: [] });
    expect(shownInWords(shown, 2)).toBe("2 open corrections are shown again on this clip.");
    expect(shownInWords(twice, 2)).toBe("Everything open is shown again already.");
    expect(shownInWords({ added: 0, unseen: [] }, 0)).toBe("Nothing is open from before.");
  });

  it("is left alone and named where the clip cannot show it", () => {
    const behind = { ...places, clips: [{ id: "side", view: "back" as const, marks: {} }] };
    const shown = showAllAgain(EMPTY_REVIEW_DRAFT, open, behind);
    expect(shown.document).toEqual(EMPTY_REVIEW_DRAFT);
    expect(shownInWords(shown, 2)).toBe("Not seen from here: Hips lead, Gaze level and on the plate.");
  });

  it("is changed and taken back without a trace", () => {
    const shown = showAgain(EMPTY_REVIEW_DRAFT, { id: "old-hips", state: "given" }, place);
    const changed = changeShownAgain(shown, "old-hips", { verdict: "partly", note: "Later", frame: 9 });
    expect(changed.shownAgain).toEqual([
      { correctionId: "old-hips", verdict: "partly", note: "Later", clipId: "side", frame: 9 },
    ]);
    expect(showAgain(changed, { id: "old-hips", state: "given" }, place)).toEqual(changed);
    expect(takeShownAgainBack(changed, "old-hips")).toEqual(EMPTY_REVIEW_DRAFT);
  });
});

describe("the choices of the line", () => {
  const line: LineFacts = {
    checkpoints: STARTING_LIBRARY,
    now: { view: "open_side", phase: null, events: [] },
    document: EMPTY_REVIEW_DRAFT,
    open: [],
  };

  it("say what is on the slip, what is open, and from where something is seen", () => {
    const facts = (typed: string, changes: Partial<LineFacts>) =>
      lineChoices(typed, "correction", { ...line, ...changes })[0];
    expect(facts("hl", {})?.facts).toBe("Stride");
    expect(facts("hl", { document: review() })?.facts).toBe("Stride, on the slip");
    expect(facts("hl", { open: [{ checkpointId: "hips-lead" }] })?.facts).toBe(
      "Stride, open already: shown again",
    );
    expect(facts("hl", { now: { ...line.now, view: "front" } })).toMatchObject({
      facts: "seen from the open side or closed side only",
      isOff: true,
    });
  });

  it("hold at most seven checkpoints", () => {
    expect(lineChoices("", "correction", line)).toHaveLength(7);
  });

  it("offer words that are no checkpoint as a keep, and never as a correction", () => {
    const own = { id: "own-words", words: "Quiet start", checkpoint: null };
    expect(lineChoices(" Quiet start ", "keep", line).at(-1)).toMatchObject(own);
    expect(lineChoices("Quiet start", "correction", line)).toEqual([]);
    expect(lineChoices("ga", "keep", line).map(({ id }) => id)).toContain(gaze.id);
    expect(lineChoices("ga", "keep", line).map(({ id }) => id)).not.toContain("own-words");
  });
});

describe("the keys of a field with usual words", () => {
  const words = ["Hip first", "Lead with your front pocket"];
  const press = (changes: Partial<PhraseKey>, text = "") =>
    phraseAct(
      {
        ...{ key: "", code: "", altKey: false, shiftKey: false, ctrlKey: false, metaKey: false },
        isComposing: false,
        ...changes,
      },
      text,
      words,
    );
  const picks = (text: string) => ({ kind: "pick", words: text });

  it("walk through them from an empty field and from one of them", () => {
    expect(press({ key: "ArrowDown" })).toEqual(picks("Hip first"));
    expect(press({ key: "ArrowDown" }, "Hip first")).toEqual(picks("Lead with your front pocket"));
    expect(press({ key: "ArrowDown" }, "Lead with your front pocket")).toBeNull();
    expect(press({ key: "ArrowUp" }, "Lead with your front pocket")).toEqual(picks("Hip first"));
    expect(press({ key: "ArrowUp" })).toEqual(picks("Lead with your front pocket"));
    expect(press({ key: "ArrowUp" }, "Hip first")).toBeNull();
  });

  it("leave words of one's own alone, but for Alt with a digit", () => {
    expect(press({ key: "ArrowDown" }, "My own words")).toBeNull();
    expect(press({ key: "¡", code: "Digit1", altKey: true }, "My own words")).toEqual(picks("Hip first"));
    expect(press({ key: "9", code: "Digit9", altKey: true })).toBeNull();
    expect(press({ key: "1", code: "Digit1" })).toBeNull();
  });

  it("go back with Enter and Escape, not with the Enter of a letter being put together or of a new line", () => {
    expect(press({ key: "Enter" }, "x")).toEqual({ kind: "done" });
    expect(press({ key: "Escape" }, "x")).toEqual({ kind: "done" });
    expect(press({ key: "Enter", shiftKey: true }, "x")).toBeNull();
    expect(press({ key: "Enter", isComposing: true }, "x")).toBeNull();
    expect(press({ key: "Enter", ctrlKey: true }, "x")).toBeNull();
  });
});
