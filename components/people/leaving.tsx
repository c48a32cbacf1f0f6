"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { DateField } from "@/components/ui/date-field";
import { CommandProblem } from "@/components/wire/command-problem";
import { FormDialog } from "@/components/wire/form-dialog";
import { textOf } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";
import { hasLeft, LEAVES_WITHIN_MONTHS } from "@/server/domain/people/leaving";
import { addMonths } from "@/server/domain/time/calendar-day";
import type { AthletePart, PersonRecord } from "./person-record";

/** What a {@link Leaving} takes. */
export interface LeavingProps {
  person: PersonRecord;
  athlete: AthletePart;
  today: string;
}

/** An admin says from which day on an athlete is gone, after reading what follows; or that they are back. */
export function Leaving({ person, athlete, today }: LeavingProps) {
  const [isAsking, setIsAsking] = useState(false);
  const { athleteId, version, leftOn } = athlete;
  const comeBack = useCommand((api, input: { athleteId: string; version: number }, once) =>
    api.families.comeBack.mutate(input, once),
  );
  if (leftOn !== null) {
    return (
      <>
        <CommandProblem problem={comeBack.problem} />
        <Button
          isSmall
          isPending={comeBack.pending}
          onPress={() => void comeBack.run({ athleteId, version })}
        >
          {hasLeft(leftOn, today) ? `${person.givenName} is back` : `${person.givenName} stays`}
        </Button>
      </>
    );
  }
  return (
    <>
      <Button isSmall onPress={() => setIsAsking(true)}>
        {person.givenName} leaves
      </Button>
      {isAsking ? <LeavingDialog {...{ person, athlete, today }} onClose={() => setIsAsking(false)} /> : null}
    </>
  );
}

function LeavingDialog({ person, athlete, today, onClose }: LeavingProps & { onClose: () => void }) {
  const { athleteId, version, joinedOn } = athlete;
  const leave = useCommand((api, input: { athleteId: string; version: number; leftOn: string }, once) =>
    api.families.leave.mutate(input, once),
  );
  async function submit(data: FormData) {
    if (await leave.run({ athleteId, version, leftOn: textOf(data, "leftOn") })) onClose();
  }
  return (
    <FormDialog
      title={`Does ${person.givenName} leave the academy?`}
      label="Leaving"
      submitText="Put it on record"
      variant="danger"
      command={leave}
      onSubmit={submit}
      onClose={onClose}
    >
      <DateField
        label="Gone from"
        name="leftOn"
        hint="From this day on nothing is sent or booked."
        defaultValue={today}
        min={joinedOn}
        max={addMonths(today, LEAVES_WITHIN_MONTHS)}
      />
      <ul>
        <li>First cancel what is booked from that day on, and finish the reviews that are owed.</li>
        <li>
          Rounds that wait for a clip of {person.givenName} end unanswered; open corrections stay as they are.
        </li>
        <li>Family and athlete can still sign in, read the season and past reviews, and log throws.</li>
        <li>
          {person.givenName} is no longer among the athletes. They can come back, with all that was written.
        </li>
      </ul>
    </FormDialog>
  );
}
