import { useState } from "react";
import { FormRow } from "@/components/ui/form";
import { NumberField } from "@/components/ui/number-field";
import { SelectField } from "@/components/ui/select-field";
import { textOf } from "@/components/wire/form-values";
import {
  type StatedDirection,
  WANTED_WAYS,
  type WantedWay,
} from "@/server/domain/mechanics/wanted-direction";

const WAY_WORDS: Record<WantedWay, string> = {
  more: "More of it",
  less: "Less of it",
  nearer: "Nearer to a value",
};

/** Which way a measure is better, as it was chosen; null when nobody says. */
export function directionOf(data: FormData): StatedDirection | null {
  const way = WANTED_WAYS.find((each) => each === textOf(data, "wanted"));
  if (way === undefined) return null;
  if (way !== "nearer") return { kind: way };
  return { kind: "nearer", to: Number(textOf(data, "wantedTo")) };
}

/** Which way the measure of a checkpoint is better. */
export function DirectionFields({ stated }: { stated: StatedDirection | null }) {
  const [way, setWay] = useState<string | null>(stated?.kind ?? "none");
  return (
    <FormRow>
      <SelectField
        label="Its measure is better with"
        name="wanted"
        value={way}
        onChange={setWay}
        hint="Without it a change is told, and not called better or worse."
        options={[
          { value: "none", label: "Not said" },
          ...WANTED_WAYS.map((each) => ({ value: each, label: WAY_WORDS[each] })),
        ]}
      />
      {way === "nearer" ? (
        <NumberField
          label="Nearer to"
          name="wantedTo"
          hint="In the unit of the measure."
          min={-1000}
          max={1000}
          defaultValue={stated?.kind === "nearer" ? stated.to : 0}
          isRequired
        />
      ) : null}
    </FormRow>
  );
}
