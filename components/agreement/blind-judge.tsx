"use client";
import { useState } from "react";
import { ToggleButton } from "react-aria-components/ToggleButton";
import { ToggleButtonGroup } from "react-aria-components/ToggleButtonGroup";
import { Player } from "@/components/clips/player";
import { filmFacts } from "@/components/clips/player-state";
import { useClipKeys } from "@/components/clips/use-clip-keys";
import { useClipPlayer } from "@/components/clips/use-clip-player";
import { Button } from "@/components/ui/button";
import { joinClasses } from "@/components/ui/join-classes";
import { LinkButton } from "@/components/ui/link-button";
import { CommandProblem } from "@/components/wire/command-problem";
import type { NextView, RatedFrame } from "@/server/api/agreement/shapes";
import { JUDGEMENT_WORDS } from "@/server/domain/mechanics/judgement";
import styles from "./agreement.module.css";
import { answerOf, type JudgedAs, UNSEEN } from "./judged-as";
import { useJudgeKeys } from "./use-judge-keys";
import { useRate } from "./use-rate";

/** What a {@link BlindJudge} takes. */
export interface BlindJudgeProps {
  item: RatedFrame;
  /** What the clip is called when it is read out. */
  label: string;
  drawing: NextView["drawing"];
}

/** One frame of a set that is judged from 0 to 3: chosen first, then kept, for it cannot be taken back. */
export function BlindJudge({ item, label, drawing }: BlindJudgeProps) {
  const { clip, frames, checkpoint } = item;
  const player = useClipPlayer(clip, frames.here);
  const [chosen, setChosen] = useState<JudgedAs | null>(null);
  const rate = useRate(item.id);
  const isShown = clip.state === "ready";
  const keep = () => {
    if (chosen !== null && !rate.pending) void rate.run(answerOf(chosen));
  };
  useClipKeys({ player });
  useJudgeKeys(isShown ? { choose: setChosen, keep } : null);
  const stage = { player, label, state: filmFacts({ ...clip, retainUntil: "" }, drawing) };
  if (!isShown) {
    return (
      <>
        <Player {...stage} />
        <StopHere />
      </>
    );
  }
  return (
    <>
      <Player {...stage} />
      <ToggleButtonGroup
        className={styles.scores}
        aria-label={`${checkpoint.name}: 0 absent to 3 clear`}
        selectionMode="single"
        selectedKeys={chosen === null ? [] : [chosen]}
        onSelectionChange={(keys) => setChosen(([...keys][0] as JudgedAs | undefined) ?? null)}
      >
        {JUDGEMENT_WORDS.map((word, score) => (
          <ToggleButton
            key={word}
            id={String(score)}
            className={styles.score}
            aria-label={`${score} ${word}`}
          >
            <b>{score}</b>
            {word}
          </ToggleButton>
        ))}
        <ToggleButton id={UNSEEN} className={joinClasses(styles.score, styles.unseen)}>
          Could not be seen
        </ToggleButton>
      </ToggleButtonGroup>
      <p className={styles.method}>
        <b>0</b> {checkpoint.absentLooksLike} <b>3</b> {checkpoint.clearLooksLike}
      </p>
      <p className={joinClasses(styles.method, styles.keys)}>
        Keys: <kbd>0</kbd> to <kbd>3</kbd> choose, <kbd>U</kbd> could not be seen, <kbd>Enter</kbd> keeps and
        goes on.
      </p>
      <CommandProblem problem={rate.problem} />
      <div className={styles.acts}>
        <Button variant="primary" isDisabled={chosen === null} isPending={rate.pending} onPress={keep}>
          Keep and go on
        </Button>
        <StopHere />
      </div>
    </>
  );
}

function StopHere() {
  return (
    <LinkButton variant="link" href="/academy/agreement">
      Stop here
    </LinkButton>
  );
}
