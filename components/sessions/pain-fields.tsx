"use client";
import { DateField } from "@/components/ui/date-field";
import { FormRow } from "@/components/ui/form";
import { RadioChoice } from "@/components/ui/radio-choice";
import { TextArea } from "@/components/ui/text-area";
import { PAIN_KINDS, type PainKind } from "@/server/domain/throwing/pain";
import { PAIN_KIND_WORDS } from "@/server/domain/throwing/throw-words";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

/** Pain as it is told at a check-in. */
export interface ToldPain {
  kind: PainKind;
  feltOn: CalendarDay;
  note: string;
}

const PAINS = PAIN_KINDS.map((kind) => ({ value: kind, label: PAIN_KIND_WORDS[kind] }));

/** What hurts, since when, and what recording it does. */
export function PainFields(props: {
  pain: ToldPain;
  today: CalendarDay;
  onChange: (pain: ToldPain) => void;
}) {
  const { pain, today, onChange } = props;
  return (
    <>
      <FormRow>
        <RadioChoice
          label="What is it"
          options={PAINS}
          value={pain.kind}
          onChange={(kind) => onChange({ ...pain, kind: kind as PainKind })}
        />
        <DateField
          label="Felt on"
          value={pain.feltOn}
          max={today}
          onChange={(feltOn) => feltOn && onChange({ ...pain, feltOn })}
        />
      </FormRow>
      <TextArea
        label="Where, and when in the throw"
        rows={2}
        maxLength={1000}
        isOptional
        value={pain.note}
        onChange={(note) => onChange({ ...pain, note })}
      />
      <p>
        This stops all throwing at once and tells the guardians and the coach. Only the guardian (an athlete
        of 18 for themselves) can clear it.
      </p>
    </>
  );
}
