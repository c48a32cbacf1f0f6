"use client";
import { SelectField } from "@/components/ui/select-field";
import type { SecondAdult } from "@/server/domain/calendar/second-adult";

interface Named {
  personId: string;
  name: string;
}

/** What a {@link SecondAdultChoice} takes. */
export interface SecondAdultChoiceProps {
  guardians: readonly Named[];
  /** Staff who could watch; the coach of the session is not among them. */
  staff: readonly Named[];
  value: SecondAdult | null;
  onChange: (value: SecondAdult | null) => void;
}

/** Who can see a one-to-one session with a minor: a guardian who watches, or another member of staff. */
export function SecondAdultChoice({ guardians, staff, value, onChange }: SecondAdultChoiceProps) {
  const options = [
    ...guardians.map(({ personId, name }) => ({
      value: `guardian:${personId}`,
      label: name,
      hint: "Guardian, watches",
    })),
    ...staff.map(({ personId, name }) => ({
      value: `staff:${personId}`,
      label: name,
      hint: "Staff, kept free for it",
    })),
  ];
  function choose(chosen: string | null) {
    const [kind, personId] = chosen?.split(":") ?? [];
    if (!personId || (kind !== "guardian" && kind !== "staff")) return onChange(null);
    onChange({ kind, personId });
  }
  return (
    <SelectField
      label="Second adult"
      hint="One-to-one with a minor is open, observable and can be interrupted: name who can see it."
      placeholder="Name a second adult"
      options={options}
      value={value ? `${value.kind}:${value.personId}` : null}
      onChange={choose}
      isRequired
    />
  );
}
