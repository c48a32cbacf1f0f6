"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { DateField } from "@/components/ui/date-field";
import { Form, FormActions, FormRow } from "@/components/ui/form";
import { Notice } from "@/components/ui/notice";
import { ACTS_COLUMN, Table } from "@/components/ui/table";
import { CommandProblem } from "@/components/wire/command-problem";
import { textOf } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";
import { dayOf } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import type { CoachWeek } from "./coach-week";
import type { Site } from "./site";
import styles from "./site-part.module.css";

type Absence = CoachWeek["absences"][number];

/** What an {@link AbsencesPart} takes. */
export interface AbsencesPartProps {
  coach: CoachWeek;
  sites: readonly Site[];
  today: string;
  isAdmin: boolean;
}

/** The whole days a coach is away from now on. */
export function AbsencesPart({ coach, sites, today, isAdmin }: AbsencesPartProps) {
  const [booked, setBooked] = useState(0);
  const [formKey, setFormKey] = useState(0);
  const site = sites.find((each) => each.siteId === coach.week[0]?.siteId) ?? sites[0];
  const zone = site?.zone ?? "UTC";
  const add = useCommand(
    (api, input: { coachPersonId: string; siteId: string; firstDay: string; lastDay: string }, once) =>
      api.hours.addAbsence.mutate(input, once),
  );
  const remove = useCommand((api, input: { absenceId: string }, once) =>
    api.hours.removeAbsence.mutate(input, once),
  );
  async function submit(data: FormData) {
    const firstDay = textOf(data, "firstDay");
    const lastDay = textOf(data, "lastDay") || firstDay;
    const input = { coachPersonId: coach.personId, siteId: site?.siteId ?? "", firstDay, lastDay };
    const answer = await add.run(input);
    if (!answer) return;
    setBooked(answer.bookedSessions);
    setFormKey((before) => before + 1);
  }
  return (
    <div>
      <div className={styles.head}>
        <h3>Away</h3>
      </div>
      <CommandProblem problem={add.problem ?? remove.problem} isBesideFields={add.problem !== null} />
      {booked > 0 ? (
        <Notice kind="attention" title={`${booked} sessions of ${coach.givenName} are booked then`}>
          They stay booked. Move or cancel them in the calendar.
        </Notice>
      ) : null}
      {coach.absences.length === 0 ? (
        <p className={styles.none}>No absence ahead.</p>
      ) : (
        <AbsenceTable
          coach={coach}
          zone={zone}
          isAdmin={isAdmin}
          onRemove={(absenceId) => void remove.run({ absenceId })}
        />
      )}
      {isAdmin ? (
        <Form
          key={formKey}
          className={styles.entry ?? ""}
          onSubmit={(data) => void submit(data)}
          errors={add.problem?.fields ?? {}}
          aria-label={`${coach.givenName} is away`}
        >
          <FormRow>
            <DateField label="First day away" name="firstDay" min={today} isRequired />
            <DateField
              label="Last day away"
              name="lastDay"
              min={today}
              hint="Empty: that one day."
              isOptional
            />
          </FormRow>
          <FormActions>
            <Button type="submit" isSmall isPending={add.pending}>
              Write down the absence
            </Button>
          </FormActions>
        </Form>
      ) : null}
    </div>
  );
}

interface AbsenceTableProps {
  coach: CoachWeek;
  zone: string;
  isAdmin: boolean;
  onRemove: (absenceId: string) => void;
}

function AbsenceTable({ coach, zone, isAdmin, onRemove }: AbsenceTableProps) {
  return (
    <Table
      caption={`When ${coach.givenName} is away`}
      isCaptionHidden
      onPhone="scroll"
      rows={coach.absences}
      rowKey={(absence) => absence.absenceId}
      columns={[
        { key: "days", heading: "Days", isRowHeading: true, cell: (absence) => daysInWords(absence, zone) },
        {
          ...ACTS_COLUMN,
          cell: (absence) =>
            isAdmin ? (
              <Button
                isSmall
                variant="link"
                onPress={() => onRemove(absence.absenceId)}
                aria-label={`Take back: away ${daysInWords(absence, zone)}`}
              >
                Take back
              </Button>
            ) : null,
        },
      ]}
    />
  );
}

function daysInWords(absence: Absence, zone: string): string {
  const first = dayOf(absence.startsAtMs, zone);
  const last = dayOf(absence.endsAtMs - 1, zone);
  return first === last ? dayInWords(first) : `${dayInWords(first)} to ${dayInWords(last)}`;
}
