"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { DateField } from "@/components/ui/date-field";
import { FormActions, FormRow } from "@/components/ui/form";
import { NumberField } from "@/components/ui/number-field";
import { Section } from "@/components/ui/section";
import { ACTS_COLUMN, Table } from "@/components/ui/table";
import { TextArea } from "@/components/ui/text-area";
import type { Answers } from "@/components/wire/answers";
import { FormDialog } from "@/components/wire/form-dialog";
import { numberOrNull, textOf } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";
import { OVERRIDE_HORIZON_DAYS, OVERRIDE_REASON_MAX_LENGTH } from "@/server/domain/rule-books/limit-override";
import { PLAUSIBLE_MAX_PITCHES } from "@/server/domain/throwing/validate-entry";
import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords, momentInWords } from "@/server/domain/time/words";

type Answer = Answers["ruleBooks"]["overrides"];
type Override = Answer["overrides"][number];

/** What {@link Overrides} takes. */
export interface OverridesProps {
  athlete: { athleteId: string; givenName: string; zone: string };
  today: CalendarDay;
  answer: Answer;
}

/** Where an admin overrode a limit for one day: whose number it was and why. Not there while there is nothing to say. */
export function Overrides({ athlete, today, answer }: OverridesProps) {
  const [asked, setAsked] = useState<Override | "new" | null>(null);
  const { mayOverride, overrides } = answer;
  if (!mayOverride && overrides.length === 0) return null;
  const canTakeBack = (row: Override) => mayOverride && row.stands && row.day >= today;
  return (
    <Section title="Overrides of a limit" {...(overrides.length > 0 ? { count: overrides.length } : {})}>
      {overrides.length > 0 ? (
        <Table
          caption="Overrides, latest first"
          isCaptionHidden
          rows={overrides}
          rowKey={(row) => row.id}
          columns={[
            {
              key: "day",
              heading: "Day",
              isRowHeading: true,
              cell: (row) => dayInWords(row.day, { withYear: true }),
            },
            { key: "what", heading: "What", cell: overrideInWords },
            { key: "why", heading: "Reason", cell: (row) => row.reason || "erased" },
            { key: "by", heading: "By", cell: (row) => row.byName },
            {
              key: "at",
              heading: "When",
              cell: (row) => momentInWords(row.atMs, athlete.zone, { withYear: true }),
            },
            {
              ...ACTS_COLUMN,
              cell: (row) =>
                canTakeBack(row) ? (
                  <Button
                    isSmall
                    variant="link"
                    aria-label={`Take back: ${dayInWords(row.day)}`}
                    onPress={() => setAsked(row)}
                  >
                    Take back
                  </Button>
                ) : null,
            },
          ]}
        />
      ) : (
        <p>None. The books’ own answers hold on every day.</p>
      )}
      {mayOverride ? (
        <FormActions>
          <Button isSmall onPress={() => setAsked("new")}>
            Override a limit
          </Button>
        </FormActions>
      ) : null}
      {asked ? (
        <OverrideDialog
          athlete={athlete}
          today={today}
          back={asked === "new" ? null : asked}
          onClose={() => setAsked(null)}
        />
      ) : null}
    </Section>
  );
}

/**
 * What an override did, as its row tells it.
 * @example "60 in all, not by the book"
 */
export function overrideInWords({ pitches, stands }: Pick<Override, "pitches" | "stands">): string {
  if (pitches === 0) return "taken back";
  return stands ? `${pitches} in all, not by the book` : `${pitches} in all; no longer holds`;
}

/** What is still to be said of an override, by field; empty when nothing is. */
function missingIn({ day, pitches, reason }: { day: string; pitches: number | null; reason: string }) {
  return {
    ...(day ? {} : { day: "Say for which day." }),
    ...(pitches === null ? { pitches: "Say how many pitches in all." } : {}),
    ...(reason ? {} : { reason: "Say why: the guardians read it." }),
  };
}

interface Asked {
  athleteId: string;
  day: CalendarDay;
  pitches: number;
  reason: string;
}

function OverrideDialog({
  athlete,
  today,
  back,
  onClose,
}: Omit<OverridesProps, "answer"> & { back: Override | null; onClose: () => void }) {
  const [errors, setErrors] = useState<Record<string, string> | null>(null);
  const give = useCommand((api, input: Asked, once) => api.ruleBooks.overrideLimit.mutate(input, once));
  async function submit(data: FormData) {
    const day = back?.day ?? textOf(data, "day");
    const pitches = back ? 0 : numberOrNull(data, "pitches");
    const reason = textOf(data, "reason");
    const missing = missingIn({ day, pitches, reason });
    setErrors(Object.keys(missing).length > 0 ? missing : null);
    if (!day || pitches === null || !reason) return;
    if (await give.run({ athleteId: athlete.athleteId, day, pitches, reason })) onClose();
  }
  return (
    <FormDialog
      title={
        back
          ? `Take back the override of ${dayInWords(back.day)}?`
          : `Override a limit of ${athlete.givenName}?`
      }
      label="Override of a limit"
      submitText={back ? "Take it back" : "Override the limit"}
      variant="danger"
      command={give}
      errors={errors}
      onSubmit={submit}
      onClose={onClose}
    >
      <p>
        The guardians and the coach are told at once, with your name and the reason, and it stays on record.
        It is not the book’s number and is never shown as one. Nothing overrides pain.
      </p>
      {back ? null : (
        <FormRow>
          <DateField
            label="For"
            name="day"
            defaultValue={today}
            min={today}
            max={addDays(today, OVERRIDE_HORIZON_DAYS)}
          />
          <NumberField
            label="In all on that day, at most"
            name="pitches"
            hint="With what is thrown already."
            unit="pitches"
            min={1}
            max={PLAUSIBLE_MAX_PITCHES}
          />
        </FormRow>
      )}
      <TextArea label="Reason" name="reason" rows={2} maxLength={OVERRIDE_REASON_MAX_LENGTH} />
    </FormDialog>
  );
}
