"use client";
import { useState } from "react";
import { CorrectionMark } from "@/components/home/correction-mark";
import { Button } from "@/components/ui/button";
import { Dialog, DialogActions } from "@/components/ui/dialog";
import { TextArea } from "@/components/ui/text-area";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { CorrectionView } from "@/server/api/reviews/shapes";
import { PHASE_WORDS } from "@/server/domain/mechanics/delivery";
import { DRAFT_LIMITS } from "@/server/domain/reviews/draft";
import { dayInWords } from "@/server/domain/time/words";
import styles from "./room-slip.module.css";

/** What a {@link RoomOpen} takes. */
export interface RoomOpenProps {
  corrections: readonly CorrectionView[];
  /** A heading of its own, with their number; left out under a section that says it. */
  title?: string;
  /** Whether the reader may retire one. */
  mayRetire: boolean;
}

/** What the athlete already works on: it counts toward the most that may be open at a time. */
export function RoomOpen({ corrections, title, mayRetire }: RoomOpenProps) {
  const [retiring, setRetiring] = useState<CorrectionView | null>(null);
  if (corrections.length === 0) return null;
  return (
    <>
      {title ? (
        <h3 className={styles.sub}>
          {title} ({corrections.length})
        </h3>
      ) : null}
      <ul className={styles.list}>
        {corrections.map((each) => (
          <li key={each.id} className={styles.entry}>
            <span aria-hidden="true">–</span>
            <span className={styles.cue}>{each.cue || each.checkpointName}</span>
            {mayRetire ? (
              <Button variant="link" onPress={() => setRetiring(each)}>
                Retire
              </Button>
            ) : null}
            <span className={styles.detail}>
              {each.checkpointName}, {PHASE_WORDS[each.phase].toLowerCase()}, since {dayInWords(each.givenOn)}
            </span>
            <span className={styles.detail}>
              <CorrectionMark state={each.state} cameBack={each.cameBack} />
            </span>
          </li>
        ))}
      </ul>
      {retiring ? <RetireDialog correction={retiring} onClose={() => setRetiring(null)} /> : null}
    </>
  );
}

/** Asks why a correction is no longer wanted, and retires it. */
export function RetireDialog({ correction, onClose }: { correction: CorrectionView; onClose: () => void }) {
  const [reason, setReason] = useState("");
  const retire = useCommand((api, input: { correctionId: string; reason: string }, once) =>
    api.reviews.retire.mutate(input, once),
  );
  const go = async () => {
    if (await retire.run({ correctionId: correction.id, reason })) onClose();
  };
  return (
    <Dialog
      title={`Retire “${correction.cue || correction.checkpointName}”?`}
      isOpen
      onOpenChange={(isOpen) => {
        if (!isOpen) onClose();
      }}
    >
      <p>It is no longer asked for, and the family reads why. What was seen of it stays on record.</p>
      <TextArea
        label="Why is it no longer wanted?"
        rows={2}
        value={reason}
        maxLength={DRAFT_LIMITS.noteLength}
        onChange={setReason}
        autoFocus
      />
      <CommandProblem problem={retire.problem} />
      <DialogActions>
        <Button
          variant="danger"
          isDisabled={reason.trim() === ""}
          isPending={retire.pending}
          onPress={() => void go()}
        >
          Retire the correction
        </Button>
        <Button onPress={onClose}>Leave it open</Button>
      </DialogActions>
    </Dialog>
  );
}
