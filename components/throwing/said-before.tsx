"use client";
import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { DateField } from "@/components/ui/date-field";
import { Disclosure } from "@/components/ui/disclosure";
import { Form, FormActions, FormRow } from "@/components/ui/form";
import { Notice } from "@/components/ui/notice";
import { Spinner } from "@/components/ui/spinner";
import { useApi } from "@/components/wire/api-provider";
import { problemOf } from "@/components/wire/problem";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { ArmToday } from "./arm-today";
import styles from "./throwing-page.module.css";

interface Asked {
  day: CalendarDay;
  knownOn: CalendarDay;
}

/** What the books left an arm on a day, as it was known by the end of that day or another: late and corrected entries aside. */
export function SaidBefore({ athleteId, today }: { athleteId: string; today: CalendarDay }) {
  const [day, setDay] = useState<CalendarDay | null>(today);
  const [knownOn, setKnownOn] = useState<CalendarDay | null>(today);
  const [asked, setAsked] = useState<Asked | null>(null);
  return (
    <Disclosure summary="What was said on a day, by what was known then">
      <Form onSubmit={() => day && knownOn && setAsked({ day, knownOn })} aria-label="What was said on a day">
        <FormRow>
          <DateField label="For the day" value={day} onChange={setDay} isRequired />
          <DateField
            label="As known by the end of"
            value={knownOn}
            onChange={setKnownOn}
            max={today}
            isRequired
          />
        </FormRow>
        <FormActions>
          <Button type="submit">Ask the book again</Button>
        </FormActions>
      </Form>
      {asked ? <Said athleteId={athleteId} asked={asked} /> : null}
      <p className={styles.quiet}>
        Entries, corrections, outings, pain, overrides and changes of a book that came later are left out. The
        athlete’s own book, which mound work counts, and a session’s day and pitches are as they are now.
      </p>
    </Disclosure>
  );
}

function Said({ athleteId, asked }: { athleteId: string; asked: Asked }) {
  const api = useApi();
  const answer = useQuery(api.throwing.saidOn.queryOptions({ athleteId, ...asked }));
  if (answer.error) return <Notice kind="refusal">{problemOf(answer.error).sentence}</Notice>;
  if (!answer.data) return <Spinner text="Asking the book…" />;
  return (
    <div role="status" className={styles.said}>
      <p>
        {dayInWords(asked.day, { withYear: true })}, as known by the end of{" "}
        {dayInWords(asked.knownOn, { withYear: true })}:
      </p>
      <ArmToday arm={answer.data} />
    </div>
  );
}
