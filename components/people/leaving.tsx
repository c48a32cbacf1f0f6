"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { DateField } from "@/components/ui/date-field";
import { Dialog, DialogActions } from "@/components/ui/dialog";
import { Form } from "@/components/ui/form";
import { CommandProblem } from "@/components/wire/command-problem";
import { textOf } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";
import { hasLeft, LEAVES_WITHIN_MONTHS } from "@/server/domain/people/leaving";
import { isOfAge } from "@/server/domain/people/person";
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
  const { athleteId, version, joinedOn, bornOn } = athlete;
  const leave = useCommand((api, input: { athleteId: string; version: number; leftOn: string }, once) =>
    api.families.leave.mutate(input, once),
  );
  async function submit(data: FormData) {
    if (await leave.run({ athleteId, version, leftOn: textOf(data, "leftOn") })) onClose();
  }
  const family = isOfAge(bornOn, today) ? person.givenName : `${person.givenName} and their guardians`;
  return (
    <Dialog
      title={`Does ${person.givenName} leave the academy?`}
      isOpen
      onOpenChange={(isOpen) => isOpen || onClose()}
    >
      <CommandProblem problem={leave.problem} isBesideFields />
      <Form onSubmit={(data) => void submit(data)} errors={leave.problem?.fields ?? {}} aria-label="Leaving">
        <DateField
          label="Gone from"
          name="leftOn"
          hint="From this day on nothing is sent or booked."
          defaultValue={today}
          min={joinedOn}
          max={addMonths(today, LEAVES_WITHIN_MONTHS)}
        />
        <ul>
          <li>What is booked from that day on has to be cancelled first, and no review may be owed.</li>
          <li>
            Rounds that wait for a clip of {person.givenName} are closed; open corrections stay as they are.
          </li>
          <li>{family} can still sign in, read the season and past reviews, and log throws.</li>
          <li>
            {person.givenName} is no longer among the athletes. They can come back, with all that was written.
          </li>
        </ul>
        <DialogActions>
          <Button type="submit" variant="danger" isPending={leave.pending}>
            Take the leaving down
          </Button>
          <Button onPress={onClose}>Leave it</Button>
        </DialogActions>
      </Form>
    </Dialog>
  );
}
