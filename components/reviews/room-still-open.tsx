"use client";
import { useState } from "react";
import { CorrectionMark } from "@/components/home/correction-mark";
import { Button } from "@/components/ui/button";
import { RadioChoice } from "@/components/ui/radio-choice";
import type { CorrectionView } from "@/server/api/reviews/shapes";
import { PHASE_WORDS } from "@/server/domain/mechanics/delivery";
import { OPEN_VERDICTS, type OpenVerdict, VERDICT_WORDS } from "@/server/domain/reviews/correction-state";
import { DRAFT_LIMITS, type DraftShownAgain } from "@/server/domain/reviews/draft";
import { dayInWords } from "@/server/domain/time/words";
import type { ClipPlace } from "./room-edits";
import { RetireDialog } from "./room-open";
import outline from "./room-outline.module.css";
import { RoomPhraseField } from "./room-phrase-field";
import { changeShownAgain, takeShownAgainBack } from "./room-saying";
import styles from "./room-slip.module.css";
import type { RoomDraft } from "./use-room-draft";
import { rowPlace } from "./use-row-in-hand";
import type { Saying } from "./use-saying";

/** What a {@link RoomStillOpen} takes. */
export interface RoomStillOpenProps {
  draft: RoomDraft<"review">;
  saying: Saying;
  /** The frame on the picture. */
  place: ClipPlace;
  goTo: (clipId: string, frame?: number) => void;
}

/** What the athlete works on already: each can be shown again on this clip, where it stays the one correction it is. */
export function RoomStillOpen(props: RoomStillOpenProps) {
  const { saying, draft } = props;
  const [retiring, setRetiring] = useState<CorrectionView | null>(null);
  const { open } = saying;
  const { shownAgain } = draft.document;
  const gone = shownAgain.filter((row) => open.every((each) => each.id !== row.correctionId));
  if (open.length + gone.length === 0) return null;
  const back = (id: string) => draft.change((now) => takeShownAgainBack(now, id));
  return (
    <>
      <h3 className={styles.sub}>Open already ({open.length})</h3>
      {open.length > shownAgain.length ? (
        <Button isSmall onPress={saying.showAllAgain}>
          Show all again on this clip
        </Button>
      ) : null}
      <ul className={styles.list}>
        {open.map((each) => (
          <OpenEntry
            key={each.id}
            {...props}
            correction={each}
            shown={shownAgain.find((row) => row.correctionId === each.id)}
            onBack={() => back(each.id)}
            onRetire={() => setRetiring(each)}
          />
        ))}
        {gone.map((row) => (
          <li key={row.correctionId} className={styles.entry}>
            <span aria-hidden="true">–</span>
            <span>Shown again, but not open any more</span>
            <Button variant="link" onPress={() => back(row.correctionId)}>
              Leave it out
            </Button>
          </li>
        ))}
      </ul>
      {retiring ? <RetireDialog correction={retiring} onClose={() => setRetiring(null)} /> : null}
    </>
  );
}

interface OpenEntryProps extends RoomStillOpenProps {
  correction: CorrectionView;
  shown: DraftShownAgain | undefined;
  onBack: () => void;
  onRetire: () => void;
}

function OpenEntry({ correction, shown, onRetire, ...props }: OpenEntryProps) {
  const { place, saying } = props;
  const words = correction.cue || correction.checkpointName;
  return (
    <li className={styles.entry}>
      <span aria-hidden="true">–</span>
      <span className={styles.cue}>{words}</span>
      <Button variant="link" onPress={onRetire} aria-label={`Retire: ${words}`}>
        Retire
      </Button>
      <span className={styles.detail}>
        {correction.checkpointName}, {PHASE_WORDS[correction.phase].toLowerCase()}, since{" "}
        {dayInWords(correction.givenOn)}
      </span>
      <span className={styles.detail}>
        <CorrectionMark state={correction.state} cameBack={correction.cameBack} />
      </span>
      <div className={styles.detail}>
        {shown ? (
          <ShownAgain {...props} correction={correction} shown={shown} />
        ) : (
          <Button
            variant="link"
            onPress={() => saying.showAgain(correction)}
            aria-label={`Show again on frame ${place.frame + 1}: ${words}`}
          >
            Show again on frame {place.frame + 1}
          </Button>
        )}
      </div>
    </li>
  );
}

function ShownAgain(props: Omit<OpenEntryProps, "onRetire" | "shown"> & { shown: DraftShownAgain }) {
  const { correction, shown, draft, place, goTo, onBack } = props;
  const { id } = correction;
  const set = (changes: Partial<Omit<DraftShownAgain, "correctionId">>) =>
    draft.change((now) => changeShownAgain(now, id, changes));
  const isHere = shown.clipId === place.clipId && shown.frame === place.frame;
  return (
    <section
      id={rowPlace(id)}
      className={outline.editor}
      aria-label={`Shown again: ${correction.checkpointName}`}
    >
      <RadioChoice
        label="On this clip"
        options={OPEN_VERDICTS.map((each) => ({ value: each, label: VERDICT_WORDS[each] }))}
        value={shown.verdict}
        onChange={(verdict) => set({ verdict: verdict as OpenVerdict })}
      />
      <RoomPhraseField
        label="A word of today"
        isOptional
        value={shown.note}
        maxLength={DRAFT_LIMITS.noteLength}
        onChange={(note) => set({ note })}
        words={[]}
        wordsLabel=""
      />
      <div className={outline.acts}>
        <Button variant="link" onPress={() => goTo(shown.clipId, shown.frame)}>
          Frame {shown.frame + 1}: show
        </Button>
        {isHere ? null : (
          <Button variant="link" onPress={() => set(place)}>
            Use frame {place.frame + 1} instead
          </Button>
        )}
        <Button variant="link" onPress={onBack}>
          Do not show it again
        </Button>
      </div>
    </section>
  );
}
