import { useState } from "react";
import { FormRow } from "@/components/ui/form";
import { NumberField } from "@/components/ui/number-field";
import { SelectField } from "@/components/ui/select-field";
import { MEASURES, type MeasureKind } from "@/server/domain/mechanics/measure-kind";
import { type StatedDirection, WANTED_WAYS } from "@/server/domain/mechanics/wanted-direction";
import { WAY_CHOICES } from "./direction-said";

const UNITS = { deg: "degrees", pct: "%", ms: "ms" } as const;

/** Which way the measure of a checkpoint is better. */
export function DirectionFields({
  measure,
  stated,
}: {
  measure: MeasureKind;
  stated: StatedDirection | null;
}) {
  const [way, setWay] = useState<string | null>(stated?.kind ?? "none");
  const { unit, of } = MEASURES[measure];
  return (
    <FormRow>
      <SelectField
        label="Its measure is better with"
        name="wanted"
        value={way}
        onChange={setWay}
        hint="Without it a change is told, and called neither better nor worse."
        options={[
          { value: "none", label: "Not said" },
          ...WANTED_WAYS.map((each) => ({ value: each, label: WAY_CHOICES[each] })),
        ]}
      />
      {way === "nearer" ? (
        <NumberField
          label="Nearer to"
          name="wantedTo"
          unit={UNITS[unit]}
          {...(of ? { hint: `Of ${of}.` } : {})}
          min={-1000}
          max={1000}
          defaultValue={stated?.kind === "nearer" ? stated.to : null}
          isRequired
        />
      ) : null}
    </FormRow>
  );
}
