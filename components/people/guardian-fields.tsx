"use client";
import { useState } from "react";
import { ComboField } from "@/components/ui/combo-field";
import { RadioChoice } from "@/components/ui/radio-choice";
import { textOf } from "@/components/wire/form-values";
import { fullName } from "@/server/domain/people/person";
import type { GuardianChoice } from "@/server/domain/people/person-details";
import type { Choices } from "./athlete-fields";
import { PersonFields, personOf } from "./person-fields";

/** What {@link GuardianFields} takes. */
export interface GuardianFieldsProps {
  adults: Choices["adults"];
  /** Before each field's name, for a guardian within a longer form: "guardians.0.". */
  prefix?: string;
}

/** Somebody who stands for an athlete: new, or a person on record. */
export function GuardianFields({ adults, prefix = "" }: GuardianFieldsProps) {
  const [isNew, setIsNew] = useState(true);
  return (
    <>
      {adults.length > 0 ? (
        <RadioChoice
          label="The guardian is"
          value={isNew ? "new" : "known"}
          onChange={(value) => setIsNew(value === "new")}
          options={[
            { value: "new", label: "New here" },
            { value: "known", label: "On record already" },
          ]}
        />
      ) : null}
      {isNew ? (
        <PersonFields prefix={prefix} isEmailRequired />
      ) : (
        <ComboField
          label="Person on record"
          name={`${prefix}personId`}
          options={adults.map((adult) => ({
            value: adult.personId,
            label: fullName(adult),
            ...(adult.email ? { hint: adult.email } : {}),
          }))}
          isRequired
        />
      )}
    </>
  );
}

/** The guardian in a form. */
export function guardianOf(data: FormData, prefix = ""): GuardianChoice {
  const personId = data.get(`${prefix}personId`);
  if (personId !== null) return { personId: String(personId) };
  const person = personOf(data, prefix);
  return { ...person, email: textOf(data, `${prefix}email`) };
}
