"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import { DELIVERY_PHASES, PHASE_WORDS } from "@/server/domain/mechanics/delivery";
import { AcademyPage } from "./academy-page";
import { AcademyPlace } from "./academy-place";
import { CheckpointDialog } from "./checkpoint-dialog";
import { CheckpointEntry } from "./checkpoint-entry";
import styles from "./checkpoints-screen.module.css";
import type { KeptCheckpoint } from "./kept-checkpoint";

/** What a {@link CheckpointsScreen} takes. */
export interface CheckpointsScreenProps {
  checkpoints: readonly KeptCheckpoint[];
  isAdmin: boolean;
}

/** The academy's own things to look at, in the delivery's order, with their cues and drills. */
export function CheckpointsScreen({ checkpoints, isAdmin }: CheckpointsScreenProps) {
  const [editing, setEditing] = useState<KeptCheckpoint | "new" | null>(null);
  const aside = checkpoints.filter((each) => !each.active);
  const entry = (each: KeptCheckpoint) => (
    <CheckpointEntry
      key={each.id}
      checkpoint={each}
      {...(isAdmin ? { onEdit: () => setEditing(each) } : {})}
    />
  );
  return (
    <AcademyPage>
      <PageHeading
        question="What do we look at in a delivery?"
        place={<AcademyPlace />}
        detail="Each is judged on the frame of one event, from 0 (absent) to 3 (clear). Sides are named front, back, glove and throwing, so the same words serve right- and left-handers."
        actions={isAdmin ? <Button onPress={() => setEditing("new")}>Add a checkpoint</Button> : null}
      />
      {DELIVERY_PHASES.map((phase) => {
        const own = checkpoints.filter((each) => each.active && each.phase === phase);
        if (own.length === 0) return null;
        return (
          <Section key={phase} title={PHASE_WORDS[phase]} count={own.length}>
            <ul className={styles.list}>{own.map(entry)}</ul>
          </Section>
        );
      })}
      {aside.length > 0 ? (
        <Section title="Put aside" count={aside.length}>
          <p className={styles.quiet}>Not offered in reviews. What was judged by them stays readable.</p>
          <ul className={styles.list}>{aside.map(entry)}</ul>
        </Section>
      ) : null}
      {editing ? (
        <CheckpointDialog
          {...(editing === "new" ? {} : { checkpoint: editing })}
          onClose={() => setEditing(null)}
        />
      ) : null}
    </AcademyPage>
  );
}
