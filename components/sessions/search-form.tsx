"use client";
import { useRouter } from "next/navigation";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { Checkbox } from "@/components/ui/checkbox";
import { DateField } from "@/components/ui/date-field";
import { Form, FormActions, FormRow } from "@/components/ui/form";
import { NumberField } from "@/components/ui/number-field";
import { RadioChoice } from "@/components/ui/radio-choice";
import { SelectField } from "@/components/ui/select-field";
import { SESSION_KIND, SESSION_KINDS, type SessionKind } from "@/server/domain/calendar/session-kind";
import styles from "./sessions.module.css";
import { DAY_PARTS, type DayPart, laterDay, type TimeSearch, timeSearchQuery } from "./time-search";

/** What a {@link SearchForm} takes. */
export interface SearchFormProps {
  search: TimeSearch;
  /** Where the search leads: the page's own address without its query. */
  href: string;
  coaches: readonly { id: string; name: string }[];
  sites: readonly { id: string; name: string }[];
}

const WEEKDAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];
const PARTS = Object.entries(DAY_PARTS).map(([value, { label }]) => ({ value, label }));
const ANY = "any";

/** What is looked for: kind, length, pitches, coach, site, days, and what the family would like best. */
export function SearchForm({ search: asked, href, coaches, sites }: SearchFormProps) {
  const router = useRouter();
  const [search, setSearch] = useState(asked);
  const change = (part: Partial<TimeSearch>) => setSearch({ ...search, ...part });
  const kinds = SESSION_KINDS.filter((kind) => SESSION_KIND[kind].mostAthletes >= search.athleteIds.length);

  function chooseKind(kind: SessionKind) {
    const { durationMin, plannedPitches } = SESSION_KIND[kind];
    change({ kind, durationMin, plannedPitches });
  }

  return (
    <Form onSubmit={() => router.push(`${href}?${timeSearchQuery(search)}`)} aria-label="What is looked for">
      <RadioChoice
        label="What"
        options={kinds.map((kind) => ({ value: kind, label: SESSION_KIND[kind].label }))}
        value={search.kind}
        onChange={(kind) => chooseKind(kind as SessionKind)}
      />
      <FormRow>
        <NumberField
          label="Length"
          unit="min"
          min={15}
          max={240}
          step={15}
          value={search.durationMin}
          onChange={(durationMin) => change({ durationMin: durationMin ?? asked.durationMin })}
        />
        {SESSION_KIND[search.kind].throwsOnMound ? (
          <NumberField
            label={search.athleteIds.length > 1 ? "Pitches planned, each" : "Pitches planned"}
            min={0}
            max={400}
            value={search.plannedPitches}
            onChange={(plannedPitches) => change({ plannedPitches: plannedPitches ?? 0 })}
          />
        ) : null}
      </FormRow>
      <FormRow>
        <DateField
          label="From"
          value={search.fromDay}
          onChange={(day) => day && change({ fromDay: day, toDay: laterDay(day, search.toDay) })}
        />
        <DateField
          label="To"
          value={search.toDay}
          min={search.fromDay}
          onChange={(day) => day && change({ toDay: day })}
        />
      </FormRow>
      <FormRow>
        <SelectField
          label="Coach"
          value={search.coachPersonId ?? ANY}
          options={[{ value: ANY, label: "Any coach" }, ...coaches.map(asOption)]}
          onChange={(id) => change({ coachPersonId: id === ANY ? null : id })}
        />
        {sites.length > 1 ? (
          <SelectField
            label="Site"
            value={search.siteId ?? ANY}
            options={[{ value: ANY, label: "Any site" }, ...sites.map(asOption)]}
            onChange={(id) => change({ siteId: id === ANY ? null : id })}
          />
        ) : null}
      </FormRow>
      <SelectField
        label="Best at"
        value={search.dayPart}
        options={PARTS}
        onChange={(part) => change({ dayPart: (part ?? "any") as DayPart })}
      />
      <fieldset className={styles.weekdays}>
        <legend>Best on</legend>
        {WEEKDAYS.map((label, index) => (
          <Checkbox
            key={label}
            label={label}
            isSelected={search.weekdays.includes(index + 1)}
            onChange={(isOn) => change({ weekdays: toggled(search.weekdays, index + 1, isOn) })}
          />
        ))}
      </fieldset>
      <FormActions>
        <Button type="submit">Find times</Button>
      </FormActions>
    </Form>
  );
}

const asOption = ({ id, name }: { id: string; name: string }) => ({ value: id, label: name });

function toggled(days: readonly number[], day: number, isOn: boolean): number[] {
  const others = days.filter((each) => each !== day);
  return isOn ? [...others, day].sort() : others;
}
