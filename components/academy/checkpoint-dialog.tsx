"use client";
import { useState } from "react";
import { FormRow } from "@/components/ui/form";
import { Notice } from "@/components/ui/notice";
import { SelectField } from "@/components/ui/select-field";
import { TextArea } from "@/components/ui/text-area";
import { TextField } from "@/components/ui/text-field";
import { FormDialog } from "@/components/wire/form-dialog";
import { textOf } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";
import {
  type CameraView,
  DELIVERY_EVENTS,
  DELIVERY_PHASES,
  type DeliveryEvent,
  EVENT_THAT_OPENS,
  EVENT_WORDS,
  PHASE_WORDS,
  type Phase,
  viewsInWords,
} from "@/server/domain/mechanics/delivery";
import { GUIDE_WORDS, MARK_GUIDES, type MarkGuide } from "@/server/domain/mechanics/mark-guide";
import { MEASURE_KINDS, MEASURES, type MeasureKind } from "@/server/domain/mechanics/measure-kind";
import { COMMON_PRACTICE } from "@/server/domain/mechanics/source-names";
import type { StatedDirection } from "@/server/domain/mechanics/wanted-direction";
import { DirectionFields } from "./direction-fields";
import { directionOf } from "./direction-said";
import type { KeptCheckpoint } from "./kept-checkpoint";
import { ViewsField, viewsOf } from "./views-field";

interface Words {
  name: string;
  absentLooksLike: string;
  clearLooksLike: string;
  views: CameraView[];
  cues: string[];
  drills: string[];
  source: string;
  measure: MeasureKind | null;
  guide: MarkGuide | null;
  wanted: StatedDirection | null;
}

type Save = Words & ({ id: string; version: number } | { phase: Phase; event: DeliveryEvent });

const linesOf = (data: FormData, name: string) =>
  textOf(data, name)
    .split("\n")
    .map((line) => line.trim())
    .filter(Boolean);

function wordsOf(data: FormData): Omit<Words, "wanted"> {
  return {
    name: textOf(data, "name"),
    absentLooksLike: textOf(data, "absentLooksLike"),
    clearLooksLike: textOf(data, "clearLooksLike"),
    views: viewsOf(data),
    cues: linesOf(data, "cues"),
    drills: linesOf(data, "drills"),
    source: textOf(data, "source"),
    measure: MEASURE_KINDS.find((each) => each === textOf(data, "measure")) ?? null,
    guide: MARK_GUIDES.find((each) => each === textOf(data, "guide")) ?? null,
  };
}

/** Adds a checkpoint, or changes the words of one; phase and event are chosen once and stay. */
export function CheckpointDialog({
  checkpoint,
  onClose,
}: {
  checkpoint?: KeptCheckpoint;
  onClose: () => void;
}) {
  const save = useCommand(async (api, input: Save, once) => {
    if ("id" in input) await api.checkpoints.edit.mutate(input, once);
    else await api.checkpoints.add.mutate(input, once);
    return true;
  });
  const [errors, setErrors] = useState<Record<string, string> | null>(null);
  async function submit(data: FormData) {
    const wanted = directionOf(data);
    setErrors(wanted === "no value" ? { wantedTo: "Say to which value." } : null);
    if (wanted === "no value") return;
    const words = wordsOf(data);
    const phase = DELIVERY_PHASES.find((each) => each === textOf(data, "phase")) ?? "stride";
    const event = DELIVERY_EVENTS.find((each) => each === textOf(data, "event")) ?? EVENT_THAT_OPENS[phase];
    const kept = checkpoint ? { id: checkpoint.id, version: checkpoint.version } : { phase, event };
    if (await save.run({ ...words, wanted, ...kept })) onClose();
  }
  return (
    <FormDialog
      title={checkpoint ? `Change: ${checkpoint.name}` : "Add a checkpoint"}
      label="Checkpoint"
      submitText={checkpoint ? "Save the checkpoint" : "Add the checkpoint"}
      isWide
      command={save}
      errors={errors}
      onSubmit={submit}
      onClose={onClose}
    >
      {checkpoint ? (
        <Notice isStatic>
          What was judged by it keeps its marks. If it is to mean something else, put it aside and add a new
          one.
        </Notice>
      ) : (
        <WhenFields />
      )}
      <WordFields checkpoint={checkpoint} />
    </FormDialog>
  );
}

function WhenFields() {
  return (
    <FormRow>
      <SelectField
        label="Phase"
        name="phase"
        defaultValue="stride"
        options={DELIVERY_PHASES.map((phase) => ({ value: phase, label: PHASE_WORDS[phase] }))}
      />
      <SelectField
        label="Judged on the frame of"
        name="event"
        defaultValue="front_foot_contact"
        options={DELIVERY_EVENTS.map((event) => ({ value: event, label: EVENT_WORDS[event] }))}
      />
    </FormRow>
  );
}

function WordFields({ checkpoint }: { checkpoint: KeptCheckpoint | undefined }) {
  const [measure, setMeasure] = useState<string | null>(checkpoint?.measure ?? "none");
  const kind = MEASURE_KINDS.find((each) => each === measure);
  return (
    <>
      <TextField label="Name" name="name" defaultValue={checkpoint?.name ?? ""} maxLength={60} isRequired />
      <ViewsField chosen={checkpoint?.views ?? []} />
      <TextArea
        label="What 0 looks like"
        name="absentLooksLike"
        defaultValue={checkpoint?.absentLooksLike ?? ""}
        maxLength={200}
        rows={2}
        isRequired
      />
      <TextArea
        label="What 3 looks like"
        name="clearLooksLike"
        defaultValue={checkpoint?.clearLooksLike ?? ""}
        maxLength={200}
        rows={2}
        isRequired
      />
      <TextArea
        label="Cues"
        name="cues"
        hint="One a line, at most 6."
        defaultValue={(checkpoint?.cues ?? []).join("\n")}
        rows={3}
        isOptional
      />
      <TextArea
        label="Drills"
        name="drills"
        hint="One a line, at most 6."
        defaultValue={(checkpoint?.drills ?? []).join("\n")}
        rows={3}
        isOptional
      />
      <FormRow>
        <SelectField
          label="Can be measured as"
          name="measure"
          value={measure}
          onChange={setMeasure}
          options={[
            { value: "none", label: "Judged only" },
            ...MEASURE_KINDS.map((kind) => ({
              value: kind,
              label: MEASURES[kind].words,
              hint: `from the ${viewsInWords(MEASURES[kind].views)}`,
            })),
          ]}
        />
        <SelectField
          label="Shown best with"
          name="guide"
          defaultValue={checkpoint?.guide ?? "none"}
          options={[
            { value: "none", label: "No guide of its own" },
            ...MARK_GUIDES.map((guide) => ({ value: guide, label: GUIDE_WORDS[guide] })),
          ]}
        />
      </FormRow>
      {/* What was said of one measure does not hold for another. */}
      {kind ? (
        <DirectionFields
          key={kind}
          measure={kind}
          stated={kind === checkpoint?.measure ? checkpoint.wanted : null}
        />
      ) : null}
      <TextField
        label="Source"
        name="source"
        hint="A published work, or “common practice”."
        defaultValue={checkpoint?.source ?? COMMON_PRACTICE}
        maxLength={200}
        isRequired
      />
    </>
  );
}
