"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { DateField } from "@/components/ui/date-field";
import { Form, FormActions, FormRow } from "@/components/ui/form";
import { Notice } from "@/components/ui/notice";
import { ACTS_COLUMN, Table } from "@/components/ui/table";
import { TextField } from "@/components/ui/text-field";
import { CommandProblem } from "@/components/wire/command-problem";
import { textOf } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";
import { dayInWords } from "@/server/domain/time/words";
import type { Site } from "./site";
import styles from "./site-part.module.css";

type Closure = Site["closures"][number];

/** The coming days on which a site is closed all day: a holiday, the weather. */
export function ClosuresPart({ site, isAdmin }: { site: Site; isAdmin: boolean }) {
  const [booked, setBooked] = useState<{ day: string; sessions: number } | null>(null);
  const [formKey, setFormKey] = useState(0);
  const close = useCommand((api, input: { siteId: string; closedOn: string; reason: string }, once) =>
    api.sites.close.mutate(input, once),
  );
  const reopen = useCommand((api, input: { closureId: string }, once) =>
    api.sites.reopen.mutate(input, once),
  );
  async function submit(data: FormData) {
    const closedOn = textOf(data, "closedOn");
    const answer = await close.run({ siteId: site.siteId, closedOn, reason: textOf(data, "reason") });
    if (!answer) return;
    setBooked(answer.bookedSessions > 0 ? { day: closedOn, sessions: answer.bookedSessions } : null);
    setFormKey((before) => before + 1);
  }
  return (
    <div className={styles.block}>
      <div className={styles.head}>
        <h3>Closed all day</h3>
      </div>
      <CommandProblem problem={close.problem ?? reopen.problem} isBesideFields={close.problem !== null} />
      {booked ? (
        <Notice kind="attention" title={`${booked.sessions} booked on ${dayInWords(booked.day)}`}>
          They stay booked. Move or cancel them in the calendar.
        </Notice>
      ) : null}
      {site.closures.length === 0 ? (
        <p className={styles.none}>No closed day ahead.</p>
      ) : (
        <Table
          caption={`Days ${site.name} is closed`}
          isCaptionHidden
          onPhone="scroll"
          rows={site.closures}
          rowKey={(closure) => closure.closureId}
          columns={[
            {
              key: "day",
              heading: "Day",
              isRowHeading: true,
              cell: (closure: Closure) => dayInWords(closure.closedOn, { withYear: true }),
            },
            { key: "reason", heading: "Reason", cell: (closure) => closure.reason },
            ...(isAdmin
              ? [
                  {
                    ...ACTS_COLUMN,
                    cell: (closure: Closure) => (
                      <Button
                        isSmall
                        variant="link"
                        isPending={reopen.pending}
                        onPress={() => void reopen.run({ closureId: closure.closureId })}
                        aria-label={`Open again on ${dayInWords(closure.closedOn)}`}
                      >
                        Open again
                      </Button>
                    ),
                  },
                ]
              : []),
          ]}
        />
      )}
      {isAdmin ? (
        <Form
          key={formKey}
          className={styles.entry ?? ""}
          onSubmit={(data) => void submit(data)}
          errors={close.problem?.fields ?? {}}
          aria-label={`Close ${site.name} for a day`}
        >
          <FormRow>
            <DateField label="Day" name="closedOn" isRequired />
            <TextField label="Reason" name="reason" placeholder="Holiday" maxLength={80} isRequired />
          </FormRow>
          <FormActions>
            <Button type="submit" isSmall isPending={close.pending}>
              Close that day
            </Button>
          </FormActions>
        </Form>
      ) : null}
    </div>
  );
}
