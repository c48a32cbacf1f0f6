"use client";
import { ComboField } from "@/components/ui/combo-field";

const ZONES = [...new Set([...Intl.supportedValuesOf("timeZone"), "UTC"])].map((zone) => ({
  value: zone,
  label: zone.replaceAll("_", " "),
}));

/** A time zone, found by typing part of its city. */
export function ZoneField({
  name,
  defaultValue,
  hint,
}: {
  name: string;
  defaultValue?: string;
  hint?: string;
}) {
  return (
    <ComboField
      label="Time zone"
      name={name}
      options={ZONES}
      {...(defaultValue === undefined ? {} : { defaultValue })}
      hint={hint ?? "Type a city. Every time at this site is shown by its clock."}
      emptyText="No zone by that name"
      isRequired
    />
  );
}
