"use client";
import { useState } from "react";
import { NumberField } from "@/components/ui/number-field";
import { RadioChoice } from "@/components/ui/radio-choice";
import { PLAUSIBLE_MAX_PITCHES } from "@/server/domain/throwing/validate-entry";
import grid from "./choice-grid.module.css";

/** Numbers that come up most; any other can be typed. Common practice, no source. */
const USUAL_NUMBERS = [0, 15, 20, 25, 30, 35, 40, 50, 60];

const OPTIONS = [
  ...USUAL_NUMBERS.map((number) => ({
    value: String(number),
    label: number === 0 ? "None" : String(number),
  })),
  { value: "other", label: "Other" },
];

/** A number of throws: one tap for the usual ones, typed otherwise. Null while none is chosen. */
export function NumberChoice(props: {
  onChange: (count: number | null) => void;
  error?: string | undefined;
}) {
  const [chosen, setChosen] = useState<string | null>(null);
  function choose(value: string) {
    setChosen(value);
    props.onChange(value === "other" ? null : Number(value));
  }
  return (
    <>
      <RadioChoice
        label="How many"
        options={OPTIONS}
        className={grid.five ?? ""}
        value={chosen}
        onChange={choose}
        error={chosen === "other" ? undefined : props.error}
      />
      {chosen === "other" ? (
        <NumberField
          label="The number"
          onChange={props.onChange}
          min={0}
          max={PLAUSIBLE_MAX_PITCHES}
          error={props.error}
          autoFocus
        />
      ) : null}
    </>
  );
}
