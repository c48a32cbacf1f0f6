"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { Disclosure } from "@/components/ui/disclosure";
import { EmptyState } from "@/components/ui/empty-state";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import type { Answers } from "@/components/wire/answers";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { AcademyPage } from "./academy-page";
import { AcademyPlace } from "./academy-place";
import type { KeptCheckpoint } from "./kept-checkpoint";
import { TemplateDialog } from "./template-dialog";
import styles from "./templates-screen.module.css";

type Template = Answers["reviewTemplates"]["list"][number];

/** What a {@link TemplatesScreen} takes. */
export interface TemplatesScreenProps {
  templates: readonly Template[];
  checkpoints: readonly KeptCheckpoint[];
  isAdmin: boolean;
}

/** What the academy usually says in a review, by age group; in the room one press puts it on the slip. */
export function TemplatesScreen({ templates, checkpoints, isAdmin }: TemplatesScreenProps) {
  const [editing, setEditing] = useState<Template | "new" | null>(null);
  const add = <Button onPress={() => setEditing("new")}>Add a usual review</Button>;
  const entries = (rows: readonly Template[]) => (
    <ul className={styles.list}>
      {rows.map((each) => (
        <TemplateEntry
          key={each.id}
          template={each}
          checkpoints={checkpoints}
          {...(isAdmin ? { onEdit: () => setEditing(each) } : {})}
        />
      ))}
    </ul>
  );
  const offered = templates.filter((each) => each.active);
  const aside = templates.filter((each) => !each.active);
  return (
    <AcademyPage>
      <PageHeading
        question="What do we usually say?"
        place={<AcademyPlace />}
        detail="A usual review is offered in the review room for athletes of its ages. One press puts its lines on the slip, each on the frame of its moment, to be looked through before anything is sent."
        actions={isAdmin && templates.length > 0 ? add : null}
      />
      {templates.length === 0 ? (
        <EmptyState title="No usual review is written down" action={isAdmin ? add : undefined}>
          Where most first clips of an age are told much the same, write it down once.
        </EmptyState>
      ) : (
        entries(offered)
      )}
      {aside.length > 0 ? (
        <Section title="Put aside" count={aside.length}>
          <p className={styles.quiet}>Not offered in the review room.</p>
          {entries(aside)}
        </Section>
      ) : null}
      {editing ? (
        <TemplateDialog
          {...(editing === "new" ? {} : { template: editing })}
          checkpoints={checkpoints}
          onClose={() => setEditing(null)}
        />
      ) : null}
    </AcademyPage>
  );
}

interface TemplateEntryProps {
  template: Template;
  checkpoints: readonly KeptCheckpoint[];
  onEdit?: () => void;
}

function TemplateEntry({ template, checkpoints, onEdit }: TemplateEntryProps) {
  const { id, version, active, name } = template;
  const set = useCommand((api, input: { id: string; version: number; active: boolean }, once) =>
    api.reviewTemplates.setActive.mutate(input, once),
  );
  const nameOf = (checkpointId: string) => checkpoints.find((each) => each.id === checkpointId)?.name ?? "";
  return (
    <li className={styles.entry}>
      <Disclosure
        summary={
          <div className={styles.summary}>
            <span className={styles.name}>{name}</span>
            <span className={styles.quiet}>{factsOf(template)}</span>
          </div>
        }
      >
        <div className={styles.body}>
          <ul className={styles.lines}>
            {template.lines.map((line) => (
              <li key={`${line.kind} ${line.checkpointId}`}>
                <b>{line.kind === "keep" ? "Keep" : "Correct"}</b> {nameOf(line.checkpointId)}: {line.words}
                {line.drill ? <span className={styles.quiet}> Drill: {line.drill}</span> : null}
              </li>
            ))}
          </ul>
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

function factsOf({ fromAge, toAge, lines }: Template): string {
  const ages =
    fromAge === toAge
      ? `age ${fromAge}`
      : toAge === 99
        ? `${fromAge} and older`
        : `ages ${fromAge} to ${toAge}`;
  return `${ages}, ${lines.length === 1 ? "1 line" : `${lines.length} lines`}`;
}
