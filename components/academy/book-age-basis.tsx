"use client";
import { FormRow } from "@/components/ui/form";
import { RadioChoice } from "@/components/ui/radio-choice";
import { SelectField } from "@/components/ui/select-field";
import { MONTHS } from "@/server/domain/rule-books/rule-in-words";
import type { AgeBasis } from "@/server/domain/throwing/rule-book";
import { useBookEditing } from "./book-fields";

const DAYS = Array.from({ length: 31 }, (_, index) => ({
  value: String(index + 1).padStart(2, "0"),
  label: String(index + 1),
}));

const PATH = ["book", "ageBasis"] as const;

/** Which age a book goes by: on the day, or on a cut-off date of the season. */
export function AgeBasisFields({ basis }: { basis: AgeBasis }) {
  const { set } = useBookEditing();
  return (
    <>
      <RadioChoice
        label="Age is"
        name={PATH.join(".")}
        value={basis.kind}
        onChange={(kind) =>
          set(PATH, kind === "on_day" ? { kind } : { kind, cutOff: "08-31", yearOffset: 0 })
        }
        options={[
          { value: "on_day", label: "The age on the day" },
          { value: "league_age", label: "The age on a cut-off date" },
        ]}
      />
      {basis.kind === "league_age" ? <CutOff basis={basis} /> : null}
    </>
  );
}

function CutOff({ basis }: { basis: Extract<AgeBasis, { kind: "league_age" }> }) {
  const { set } = useBookEditing();
  const [month = "01", day = "01"] = basis.cutOff.split("-");
  return (
    <FormRow>
      <SelectField
        label="Cut-off month"
        value={month}
        onChange={(next) => next && set([...PATH, "cutOff"], `${next}-${day}`)}
        options={MONTHS.map((label, index) => ({ value: String(index + 1).padStart(2, "0"), label }))}
      />
      <SelectField
        label="Cut-off day"
        name={[...PATH, "cutOff"].join(".")}
        value={day}
        onChange={(next) => next && set([...PATH, "cutOff"], `${month}-${next}`)}
        options={DAYS}
      />
      <SelectField
        label="Of"
        name={[...PATH, "yearOffset"].join(".")}
        value={String(basis.yearOffset)}
        onChange={(next) => set([...PATH, "yearOffset"], next === "-1" ? -1 : 0)}
        options={[
          { value: "0", label: "the year of the day" },
          { value: "-1", label: "the year before" },
        ]}
      />
    </FormRow>
  );
}
