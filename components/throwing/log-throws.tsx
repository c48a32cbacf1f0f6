"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { Form, FormActions } from "@/components/ui/form";
import { RadioChoice } from "@/components/ui/radio-choice";
import { showToast } from "@/components/ui/toast";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { THROW_KINDS, type ThrowKind } from "@/server/domain/throwing/throw-entry";
import { THROW_KIND_WORDS, throwsInWords } from "@/server/domain/throwing/throw-words";
import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import grid from "./choice-grid.module.css";
import { DayChoice } from "./day-choice";
import { NumberChoice } from "./number-choice";

const KINDS = THROW_KINDS.map((kind) => ({ value: kind, label: THROW_KIND_WORDS[kind] }));

interface Throws {
  athleteId: string;
  thrownOn: CalendarDay;
  kind: ThrowKind;
  pitches: number;
}

/** What a {@link LogThrows} takes. */
export interface LogThrowsProps {
  athleteId: string;
  today: CalendarDay;
  /** What was logged last: the likeliest kind. */
  usualKind: ThrowKind;
}

/** Throws into the log: the number, then the button, which says all that will be written; the rest is set already. */
export function LogThrows({ athleteId, today, usualKind }: LogThrowsProps) {
  const [kind, setKind] = useState<ThrowKind>(usualKind);
  const [thrownOn, setThrownOn] = useState<CalendarDay | null>(today);
  const [pitches, setPitches] = useState<number | null>(null);
  const [logged, setLogged] = useState(0);
  const [isMissing, setMissing] = useState(false);
  const log = useCommand((api, input: Throws, once) => api.throwing.log.mutate(input, once));

  async function submit() {
    setMissing(pitches === null);
    if (pitches === null || thrownOn === null) return;
    const answer = await log.run({ athleteId, thrownOn, kind, pitches });
    if (!answer) return;
    const what = `${throwsInWords(kind, pitches)}, ${whenInWords(thrownOn, today)}`;
    showToast({ text: `Logged: ${what}. Today: ${answer.arm.words}.` });
    setPitches(null);
    setThrownOn(today);
    setLogged(logged + 1);
  }

  return (
    <Form onSubmit={() => void submit()} aria-label="Log throws">
      <CommandProblem problem={log.problem} />
      <NumberChoice
        key={`number ${logged}`}
        onChange={setPitches}
        error={
          isMissing && pitches === null ? "Choose a number; None says that nothing was thrown." : undefined
        }
      />
      <RadioChoice
        label="What"
        options={KINDS}
        className={grid.four ?? ""}
        value={kind}
        onChange={(value) => setKind(value as ThrowKind)}
      />
      <DayChoice key={`day ${logged}`} today={today} day={thrownOn} onChange={setThrownOn} />
      <FormActions>
        <Button type="submit" variant="primary" isPending={log.pending} pendingText="Logging…">
          {pitches === null || thrownOn === null
            ? "Log throws"
            : `Log ${throwsInWords(kind, pitches)}, ${whenInWords(thrownOn, today)}`}
        </Button>
      </FormActions>
    </Form>
  );
}

function whenInWords(day: CalendarDay, today: CalendarDay): string {
  if (day === today) return "today";
  return day === addDays(today, -1) ? "yesterday" : dayInWords(day);
}
