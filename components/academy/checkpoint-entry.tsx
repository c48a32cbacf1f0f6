"use client";
import { Button } from "@/components/ui/button";
import { Disclosure } from "@/components/ui/disclosure";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { CAMERA_VIEW_WORDS, EVENT_WORDS } from "@/server/domain/mechanics/delivery";
import { GUIDE_WORDS } from "@/server/domain/mechanics/mark-guide";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import { directionInWords } from "@/server/domain/mechanics/wanted-direction";
import styles from "./checkpoints-screen.module.css";
import type { KeptCheckpoint } from "./kept-checkpoint";

/** One checkpoint: its name, frame and views; what 0 and 3 look like, cues and drills behind it. */
export function CheckpointEntry({ checkpoint, onEdit }: { checkpoint: KeptCheckpoint; onEdit?: () => void }) {
  const { id, version, active, name } = checkpoint;
  const set = useCommand((api, input: { id: string; version: number; active: boolean }, once) =>
    api.checkpoints.setActive.mutate(input, once),
  );
  return (
    <li className={styles.entry}>
      <Disclosure
        summary={
          <div className={styles.summary}>
            <span className={styles.name}>{name}</span>
            <span className={styles.quiet}>
              {EVENT_WORDS[checkpoint.event]};{" "}
              {checkpoint.views.map((view) => CAMERA_VIEW_WORDS[view]).join(", ")}
            </span>
          </div>
        }
      >
        <div className={styles.body}>
          <p>
            <b>0:</b> {checkpoint.absentLooksLike}
          </p>
          <p>
            <b>3:</b> {checkpoint.clearLooksLike}
          </p>
          <Lines title="Cues" lines={checkpoint.cues} />
          <Lines title="Drills" lines={checkpoint.drills} />
          {checkpoint.measure ? (
            <p>
              <b>Measured:</b> {MEASURES[checkpoint.measure].words}
              {checkpoint.wanted
                ? `, better ${directionInWords(checkpoint.wanted, checkpoint.measure)}`
                : null}
            </p>
          ) : null}
          {checkpoint.guide ? (
            <p>
              <b>Shown with:</b> {GUIDE_WORDS[checkpoint.guide]}
            </p>
          ) : null}
          <small>Source: {checkpoint.source}</small>
          <CommandProblem problem={set.problem} />
          {onEdit ? (
            <div className={styles.acts}>
              <Button isSmall onPress={onEdit} aria-label={`Change: ${name}`}>
                Change
              </Button>
              <Button
                isSmall
                variant="link"
                isPending={set.pending}
                onPress={() => void set.run({ id, version, active: !active })}
                aria-label={`${active ? "Put aside" : "Offer again"}: ${name}`}
              >
                {active ? "Put aside" : "Offer again"}
              </Button>
            </div>
          ) : null}
        </div>
      </Disclosure>
    </li>
  );
}

function Lines({ title, lines }: { title: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <div>
      <b>{title}</b>
      <ul className={styles.lines}>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}
