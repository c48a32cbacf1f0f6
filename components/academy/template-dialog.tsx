"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { FormRow } from "@/components/ui/form";
import { NumberField } from "@/components/ui/number-field";
import { RadioChoice } from "@/components/ui/radio-choice";
import { SelectField } from "@/components/ui/select-field";
import { TextArea } from "@/components/ui/text-area";
import { TextField } from "@/components/ui/text-field";
import type { Answers } from "@/components/wire/answers";
import { FormDialog } from "@/components/wire/form-dialog";
import { useCommand } from "@/components/wire/use-command";
import { PHASE_WORDS } from "@/server/domain/mechanics/delivery";
import { DRAFT_LIMITS } from "@/server/domain/reviews/draft";
import {
  type ReviewTemplate,
  TEMPLATE_LIMITS,
  type TemplateLine,
} from "@/server/domain/reviews/review-template";
import type { KeptCheckpoint } from "./kept-checkpoint";
import { asTemplate, EMPTY_TEMPLATE, withChangedLine, withLine, withoutLine } from "./template-draft";
import styles from "./templates-screen.module.css";

/** What a {@link TemplateDialog} takes. */
export interface TemplateDialogProps {
  /** The one that is changed; left out for a new one. */
  template?: Answers["reviewTemplates"]["list"][number];
  checkpoints: readonly KeptCheckpoint[];
  onClose: () => void;
}

type Save = { template: ReviewTemplate } & (object | { id: string; version: number });

/** Writes down what is usually said in a review of an age group, line by line. */
export function TemplateDialog({ template, checkpoints, onClose }: TemplateDialogProps) {
  const [draft, setDraft] = useState(template ?? EMPTY_TEMPLATE);
  const save = useCommand(async (api, input: Save, once) => {
    if ("id" in input) await api.reviewTemplates.edit.mutate(input, once);
    else await api.reviewTemplates.add.mutate(input, once);
    return true;
  });
  const submit = async () => {
    const kept = template ? { id: template.id, version: template.version } : {};
    if (await save.run({ template: asTemplate(draft), ...kept })) onClose();
  };
  const age = { min: TEMPLATE_LIMITS.youngest, max: TEMPLATE_LIMITS.oldest };
  return (
    <FormDialog
      title={template ? `Change: ${template.name}` : "Add a usual review"}
      label="Usual review"
      submitText={template ? "Save the usual review" : "Add the usual review"}
      isWide
      command={save}
      onSubmit={submit}
      onClose={onClose}
    >
      <TextField
        label="Name"
        name="template.name"
        hint="As coaches read it in the review room."
        value={draft.name}
        maxLength={TEMPLATE_LIMITS.nameLength}
        onChange={(name) => setDraft({ ...draft, name })}
        isRequired
      />
      <FormRow>
        <NumberField
          label="From age"
          name="template.fromAge"
          {...age}
          value={draft.fromAge}
          onChange={(fromAge) => setDraft({ ...draft, fromAge })}
        />
        <NumberField
          label="To age"
          name="template.toAge"
          {...age}
          value={draft.toAge}
          onChange={(toAge) => setDraft({ ...draft, toAge })}
        />
      </FormRow>
      {draft.lines.map((line, index) => (
        <LineFields
          // biome-ignore lint/suspicious/noArrayIndexKey: lines have no names; what they hold is all in the state
          key={index}
          {...{ line, index, checkpoints }}
          onChange={(changes) => setDraft(withChangedLine(draft, index, changes, checkpoints))}
          onRemove={() => setDraft(withoutLine(draft, index))}
          mayRemove={draft.lines.length > 1}
        />
      ))}
      {draft.lines.length < TEMPLATE_LIMITS.lines ? (
        <Button isSmall className={styles.add} onPress={() => setDraft(withLine(draft))}>
          Add a line
        </Button>
      ) : null}
    </FormDialog>
  );
}

interface LineFieldsProps {
  line: TemplateLine;
  index: number;
  checkpoints: readonly KeptCheckpoint[];
  onChange: (changes: Partial<TemplateLine>) => void;
  onRemove: () => void;
  mayRemove: boolean;
}

function LineFields({ line, index, checkpoints, onChange, onRemove, mayRemove }: LineFieldsProps) {
  const name = (field: keyof TemplateLine) => `template.lines.${index}.${field}`;
  const offered = checkpoints.filter((each) => each.active || each.id === line.checkpointId);
  return (
    <fieldset className={styles.lineFields}>
      <legend className={styles.legend}>Line {index + 1}</legend>
      <RadioChoice
        label="Said as"
        options={[
          { value: "correction", label: "Correction" },
          { value: "keep", label: "Keep" },
        ]}
        value={line.kind}
        onChange={(kind) => onChange({ kind: kind === "keep" ? "keep" : "correction" })}
      />
      <SelectField
        label="Checkpoint"
        name={name("checkpointId")}
        value={line.checkpointId || null}
        onChange={(checkpointId) => onChange({ checkpointId: checkpointId ?? "" })}
        options={offered.map((each) => ({
          value: each.id,
          label: each.name,
          hint: PHASE_WORDS[each.phase],
        }))}
        isRequired
      />
      <TextArea
        label={line.kind === "keep" ? "What is good" : "Cue"}
        name={name("words")}
        rows={1}
        value={line.words}
        maxLength={DRAFT_LIMITS.cueLength}
        onChange={(words) => onChange({ words })}
        isRequired
      />
      {line.kind === "keep" ? null : (
        <TextArea
          label="Drill"
          name={name("drill")}
          isOptional
          rows={1}
          value={line.drill}
          maxLength={DRAFT_LIMITS.drillLength}
          onChange={(drill) => onChange({ drill })}
        />
      )}
      {mayRemove ? (
        <Button isSmall variant="link" onPress={onRemove} aria-label={`Remove line ${index + 1}`}>
          Remove this line
        </Button>
      ) : null}
    </fieldset>
  );
}
