"use client";
import { DateField } from "@/components/ui/date-field";
import { FormRow } from "@/components/ui/form";
import { NumberField } from "@/components/ui/number-field";
import { RadioChoice } from "@/components/ui/radio-choice";
import { SelectField } from "@/components/ui/select-field";
import type { Answers } from "@/components/wire/answers";
import { numberOrNull, textOf } from "@/components/wire/form-values";
import type { AthleteRecord } from "@/server/domain/people/athlete-record";
import { fullName } from "@/server/domain/people/person";
import { personOf } from "./person-fields";

/** What a form about a person offers. */
export type Choices = Answers["people"]["choices"];

/** What {@link AthleteFields} takes. */
export interface AthleteFieldsProps {
  choices: Choices;
  today: string;
  athlete?: Omit<AthleteRecord, "givenName" | "familyName" | "email" | "phone">;
  onBornOn?: (day: string | null) => void;
}

/** What is written down of an arm: birth date, hand, height, home site, rule book. */
export function AthleteFields({ choices, today, athlete, onBornOn }: AthleteFieldsProps) {
  return (
    <>
      <FormRow>
        <DateField
          label="Born on"
          name="bornOn"
          defaultValue={athlete?.bornOn ?? null}
          max={today}
          hint="Limits and rest days go by age."
          isRequired
          {...(onBornOn ? { onChange: onBornOn } : {})}
        />
        <RadioChoice
          label="Throws with the"
          name="throws"
          defaultValue={athlete?.throws ?? "right"}
          options={[
            { value: "right", label: "Right" },
            { value: "left", label: "Left" },
          ]}
        />
        <NumberField
          label="Height"
          name="heightCm"
          defaultValue={athlete?.heightCm ?? null}
          min={80}
          max={230}
          unit="cm"
          isOptional
        />
      </FormRow>
      <FormRow>
        <SelectField
          label="Home site"
          name="homeSiteId"
          {...defaultOf(athlete?.homeSiteId ?? choices.sites[0]?.siteId)}
          options={choices.sites.map((site) => ({ value: site.siteId, label: site.name }))}
          isRequired
        />
        <SelectField
          label="Rule book"
          name="ruleBookId"
          {...defaultOf(athlete?.ruleBookId ?? choices.ruleBooks[0]?.id)}
          options={bookOptions(choices, athlete?.ruleBookId)}
          isRequired
        />
      </FormRow>
    </>
  );
}

/** The books that can be chosen, and the one that is chosen already. */
function bookOptions(choices: Choices, chosenId: string | undefined) {
  return choices.ruleBooks
    .filter((book) => book.isOffered || book.id === chosenId)
    .map((book) => ({ value: book.id, label: book.name }));
}

const defaultOf = (value: string | undefined) => (value === undefined ? {} : { defaultValue: value });

/** The athlete's record in a form. */
export function recordOf(data: FormData): AthleteRecord {
  return {
    ...personOf(data),
    bornOn: textOf(data, "bornOn"),
    throws: textOf(data, "throws") === "left" ? "left" : "right",
    heightCm: numberOrNull(data, "heightCm"),
    homeSiteId: textOf(data, "homeSiteId"),
    ruleBookId: textOf(data, "ruleBookId"),
  };
}

/** The value that stands for no coach in a list of coaches. */
export const NO_COACH = "none";

/** The coaches as choices, with nobody as the last. */
export function coachOptions(choices: Choices) {
  return [
    ...choices.coaches.map((coach) => ({ value: coach.personId, label: fullName(coach) })),
    { value: NO_COACH, label: "Nobody yet" },
  ];
}
