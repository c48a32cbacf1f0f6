"use client";
import { Button } from "@/components/ui/button";
import { FormRow } from "@/components/ui/form";
import type { Rule, RuleOf } from "@/server/domain/throwing/rule";
import { AgeBands, PitchBands } from "./book-bands";
import type { DraftPath } from "./book-draft";
import { ClaimField, FigureField, MayBeNone, useBookEditing, WordField } from "./book-fields";

/** The fields of one rule that are its kind's own: its figures by age, and what else it says. */
export function RuleFields({ rule, path }: { rule: Rule; path: DraftPath }) {
  switch (rule.kind) {
    case "pitch_count":
      return <PitchCountFields rule={rule} path={path} />;
    case "innings":
      return <InningsFields rule={rule} path={path} />;
    case "days_in_a_row":
      return (
        <FigureField
          label="Days in a row, at most"
          path={[...path, "maxDays"]}
          value={rule.maxDays}
          unit="days"
        />
      );
    case "one_game_a_day":
      return null;
    case "catching":
      return <CatchingFields rule={rule} path={path} />;
    case "total":
      return <TotalFields rule={rule} path={path} />;
    case "months_off":
      return <MonthsOffFields rule={rule} path={path} />;
  }
}

interface FieldsProps<Of extends Rule> {
  rule: Of;
  path: DraftPath;
}

function PitchCountFields({ rule, path }: FieldsProps<RuleOf<"pitch_count">>) {
  return (
    <>
      <PitchBands bands={rule.ageBands} path={[...path, "ageBands"]} />
      <FormRow>
        <WordField
          label="Rest goes by"
          path={[...path, "restCountsFrom"]}
          value={rule.restCountsFrom}
          options={[
            { value: "total", label: "all pitches of the day" },
            { value: "start_of_last_batter", label: "the count at the start of the last batter" },
          ]}
        />
        <FigureField
          label="An intentional walk adds"
          path={[...path, "intentionalWalkPitches"]}
          value={rule.intentionalWalkPitches}
          unit="pitches"
        />
      </FormRow>
      <ClaimField
        label="A batter may be finished once the number is reached"
        path={[...path, "finishesBatter"]}
        value={rule.finishesBatter}
      />
    </>
  );
}

function InningsFields({ rule, path }: FieldsProps<RuleOf<"innings">>) {
  const { rolling } = rule;
  return (
    <>
      <AgeBands
        bands={rule.ageBands}
        path={[...path, "ageBands"]}
        figures={[{ key: "outsPerDay", label: "At most outs in a day" }]}
      />
      <WordField
        label="An inning is counted"
        path={[...path, "counted"]}
        value={rule.counted}
        options={[
          { value: "outs", label: "by its outs" },
          { value: "innings_started", label: "whole, from its first pitch" },
        ]}
      />
      <MayBeNone
        label="More than this many outs in a day ask for a day of rest"
        isThere={rule.outsWithoutRest !== null}
        path={[...path, "outsWithoutRest"]}
        blank={Number.NaN}
      >
        <FigureField
          label="Without rest, at most"
          unit="outs"
          path={[...path, "outsWithoutRest"]}
          value={rule.outsWithoutRest}
        />
      </MayBeNone>
      <MayBeNone
        label="There is a most over several days in a row"
        isThere={rolling !== null}
        path={[...path, "rolling"]}
        blank={{ days: Number.NaN, outs: Number.NaN, restWhenFull: true }}
      >
        {rolling ? (
          <>
            <FormRow>
              <FigureField
                label="Over any"
                unit="days"
                path={[...path, "rolling", "days"]}
                value={rolling.days}
              />
              <FigureField
                label="At most"
                unit="outs"
                path={[...path, "rolling", "outs"]}
                value={rolling.outs}
              />
            </FormRow>
            <ClaimField
              label="Once it is reached, the next day is for rest"
              path={[...path, "rolling", "restWhenFull"]}
              value={rolling.restWhenFull}
            />
          </>
        ) : null}
      </MayBeNone>
    </>
  );
}

function CatchingFields({ rule, path }: FieldsProps<RuleOf<"catching">>) {
  return (
    <>
      <MayBeNone
        label="Catching bars pitching"
        isThere={rule.inningsThatBarPitching !== null}
        path={[...path, "inningsThatBarPitching"]}
        blank={Number.NaN}
      >
        <FigureField
          label="From how many innings caught"
          path={[...path, "inningsThatBarPitching"]}
          value={rule.inningsThatBarPitching}
        />
      </MayBeNone>
      <MayBeNone
        label="Pitching bars catching"
        isThere={rule.pitchesThatBarCatching !== null}
        path={[...path, "pitchesThatBarCatching"]}
        blank={Number.NaN}
      >
        <FigureField
          label="From which pitch"
          path={[...path, "pitchesThatBarCatching"]}
          value={rule.pitchesThatBarCatching}
        />
      </MayBeNone>
      <p>Where catching came before pitching, catching ends for the day:</p>
      <AgeBands
        bands={rule.afterCatching}
        path={[...path, "afterCatching"]}
        figures={[{ key: "pitchesThatBarCatching", label: "From pitch" }]}
      />
    </>
  );
}

function TotalFields({ rule, path }: FieldsProps<RuleOf<"total">>) {
  const { set } = useBookEditing();
  const isInDays = "days" in rule.over;
  const length = "days" in rule.over ? rule.over.days : rule.over.months;
  const key = isInDays ? "days" : "months";
  return (
    <>
      <FormRow>
        <WordField
          label="Of"
          path={[...path, "unit"]}
          value={rule.unit}
          options={[
            { value: "pitches", label: "pitches" },
            { value: "outs", label: "outs, three to an inning" },
          ]}
        />
        <FigureField label="Over any" unit={key} path={[...path, "over", key]} value={length} />
        <Button
          isSmall
          onPress={() => set([...path, "over"], isInDays ? { months: Number.NaN } : { days: Number.NaN })}
        >
          {isInDays ? "Count in months" : "Count in days"}
        </Button>
      </FormRow>
      <AgeBands
        bands={rule.ageBands}
        path={[...path, "ageBands"]}
        figures={[{ key: "most", label: `At most ${rule.unit}` }]}
      />
    </>
  );
}

function MonthsOffFields({ rule, path }: FieldsProps<RuleOf<"months_off">>) {
  return (
    <>
      <WordField
        label="Months without"
        path={[...path, "of"]}
        value={rule.of}
        options={[
          { value: "throwing", label: "any overhead throwing" },
          { value: "competitive_pitching", label: "pitching in competition" },
        ]}
      />
      <AgeBands
        bands={rule.ageBands}
        path={[...path, "ageBands"]}
        figures={[
          { key: "months", label: "Months of a year" },
          { key: "runMonths", label: "In one stretch" },
        ]}
      />
    </>
  );
}
