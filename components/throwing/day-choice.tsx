"use client";
import { useState } from "react";
import { DateField } from "@/components/ui/date-field";
import { RadioChoice } from "@/components/ui/radio-choice";
import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";

const OPTIONS = [
  { value: "0", label: "Today" },
  { value: "-1", label: "Yesterday" },
  { value: "earlier", label: "Earlier" },
];

/** What a {@link DayChoice} takes. */
export interface DayChoiceProps {
  today: CalendarDay;
  day: CalendarDay | null;
  onChange: (day: CalendarDay | null) => void;
}

/** A day up to today: one tap for today and yesterday, picked otherwise. */
export function DayChoice({ today, day, onChange }: DayChoiceProps) {
  const [chosen, setChosen] = useState("0");
  function choose(value: string) {
    setChosen(value);
    onChange(addDays(today, value === "earlier" ? -2 : Number(value)));
  }
  return (
    <>
      <RadioChoice label="When" options={OPTIONS} value={chosen} onChange={choose} />
      {chosen === "earlier" ? (
        <DateField label="The day" value={day} onChange={onChange} max={today} />
      ) : null}
    </>
  );
}
