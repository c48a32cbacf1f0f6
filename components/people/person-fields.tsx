"use client";
import { FormRow } from "@/components/ui/form";
import { TextField } from "@/components/ui/text-field";
import { textOf, textOrNull } from "@/components/wire/form-values";
import type { PersonDetails } from "@/server/domain/people/person-details";

/** What {@link PersonFields} takes. */
export interface PersonFieldsProps {
  person?: PersonDetails;
  /** Before each field's name, for a person within a longer form: "guardians.0.". */
  prefix?: string;
  isEmailRequired?: boolean;
}

/** Names and addresses of a person. */
export function PersonFields({ person, prefix = "", isEmailRequired }: PersonFieldsProps) {
  const needed = isEmailRequired ? { isRequired: true } : { isOptional: true };
  return (
    <>
      <FormRow>
        <TextField
          label="Given name"
          name={`${prefix}givenName`}
          defaultValue={person?.givenName ?? ""}
          maxLength={60}
          autoComplete="off"
          isRequired
        />
        <TextField
          label="Family name"
          name={`${prefix}familyName`}
          defaultValue={person?.familyName ?? ""}
          maxLength={60}
          autoComplete="off"
          isRequired
        />
      </FormRow>
      <FormRow>
        <TextField
          label="E-mail"
          name={`${prefix}email`}
          type="email"
          defaultValue={person?.email ?? ""}
          maxLength={200}
          autoComplete="off"
          {...needed}
        />
        <TextField
          label="Telephone"
          name={`${prefix}phone`}
          type="tel"
          defaultValue={person?.phone ?? ""}
          maxLength={40}
          autoComplete="off"
          isOptional
        />
      </FormRow>
    </>
  );
}

/** The names and addresses in a form. */
export function personOf(data: FormData, prefix = ""): PersonDetails {
  return {
    givenName: textOf(data, `${prefix}givenName`),
    familyName: textOf(data, `${prefix}familyName`),
    email: textOrNull(data, `${prefix}email`),
    phone: textOrNull(data, `${prefix}phone`),
  };
}
