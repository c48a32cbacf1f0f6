"use client";
import { FormPart, FormRow } from "@/components/ui/form";
import { Menu } from "@/components/ui/menu";
import { Section } from "@/components/ui/section";
import { TextField } from "@/components/ui/text-field";
import { RULE_KIND_WORDS } from "@/server/domain/rule-books/rule-in-words";
import { RULE_KINDS, type Rule } from "@/server/domain/throwing/rule";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { blankRule } from "./blank-rule";
import { type DraftPath, fieldNameOf } from "./book-draft";
import { DayFigure, TakeOut, useBookEditing, WordField } from "./book-fields";
import { RuleFields } from "./book-rule-fields";

/** One rule of a book that is being written: its figures, whether it limits, since when, and where it is from. */
export function RuleSection({ rule, path, isOnly }: { rule: Rule; path: DraftPath; isOnly: boolean }) {
  const { set } = useBookEditing();
  const title = RULE_KIND_WORDS[rule.kind];
  return (
    <Section title={title} aside={isOnly ? null : <TakeOut what={title} path={path} />}>
      <FormPart>
        <RuleFields rule={rule} path={path} />
        <FormRow>
          {rule.kind === "months_off" ? null : (
            <WordField
              label="It is"
              path={[...path, "level"]}
              value={rule.level}
              options={[
                { value: "limit", label: "a limit: it lowers the number" },
                { value: "advice", label: "advice: it only warns" },
              ]}
            />
          )}
          <DayFigure label="In force from" path={[...path, "effectiveFrom"]} value={rule.effectiveFrom} />
          <DayFigure
            label="Until before"
            hint="Empty while it holds."
            path={[...path, "effectiveUntil"]}
            value={rule.effectiveUntil}
          />
        </FormRow>
        <TextField
          label="Source"
          name={fieldNameOf([...path, "source"])}
          value={rule.source}
          onChange={(source) => set([...path, "source"], source)}
          maxLength={500}
        />
      </FormPart>
    </Section>
  );
}

/** Adds a rule of a kind, to be filled in. */
export function AddRule({ today }: { today: CalendarDay }) {
  const { add } = useBookEditing();
  return (
    <Section title="More rules">
      <Menu
        label="Add a rule"
        entries={RULE_KINDS.map((kind) => ({
          key: kind,
          label: RULE_KIND_WORDS[kind],
          onAction: () => add(["book", "rules"], blankRule(kind, today)),
        }))}
      />
    </Section>
  );
}
