"use client";
import Link from "next/link";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { ConfirmDialog } from "@/components/ui/confirm-dialog";
import { Section } from "@/components/ui/section";
import { ACTS_COLUMN, Table } from "@/components/ui/table";
import { CommandProblem } from "@/components/wire/command-problem";
import { FormDialog } from "@/components/wire/form-dialog";
import { useCommand } from "@/components/wire/use-command";
import { fullName, isOfAge } from "@/server/domain/people/person";
import type { GuardianChoice } from "@/server/domain/people/person-details";
import type { AthleteSectionProps } from "./athlete-section";
import { GuardianFields, guardianOf } from "./guardian-fields";

type Guardian = AthleteSectionProps["athlete"]["guardians"][number];

/** Who stands for an athlete; a minor always keeps one. */
export function GuardiansSection({ person, athlete, choices, today, isAdmin }: AthleteSectionProps) {
  const [isAdding, setIsAdding] = useState(false);
  const [ending, setEnding] = useState<Guardian | null>(null);
  const end = useCommand((api, input: { athleteId: string; guardianPersonId: string }, once) =>
    api.families.endGuardianship.mutate(input, once),
  );
  async function endNow() {
    if (ending) await end.run({ athleteId: athlete.athleteId, guardianPersonId: ending.personId });
    setEnding(null);
  }
  return (
    <Section
      title="Guardians"
      count={athlete.guardians.length}
      aside={
        isAdmin ? (
          <Button isSmall onPress={() => setIsAdding(true)}>
            Add a guardian
          </Button>
        ) : null
      }
    >
      <CommandProblem problem={end.problem} />
      <p>{viewInWords(person.givenName, athlete, today)}</p>
      <GuardiansTable guardians={athlete.guardians} onEnd={isAdmin ? setEnding : null} />
      {isAdding ? (
        <AddGuardian
          person={person}
          athlete={athlete}
          adults={choices.adults}
          onClose={() => setIsAdding(false)}
        />
      ) : null}
      <ConfirmDialog
        title={`End the guardianship of ${ending ? fullName(ending) : ""}?`}
        confirmText="End the guardianship"
        isOpen={ending !== null}
        isPending={end.pending}
        onConfirm={() => void endNow()}
        onCancel={() => setEnding(null)}
      >
        From then on they see nothing of {person.givenName} and are told nothing. It can be given again.
      </ConfirmDialog>
    </Section>
  );
}

function viewInWords(name: string, athlete: AthleteSectionProps["athlete"], today: string): string {
  if (!isOfAge(athlete.bornOn, today))
    return "They act for the athlete and are told whatever the athlete is told.";
  if (athlete.grantsGuardians) return `${name} is of age and lets guardians go on seeing the record.`;
  return `${name} is of age and acts alone: guardians see nothing unless ${name} grants it.`;
}

interface GuardiansTableProps {
  guardians: readonly Guardian[];
  onEnd: ((guardian: Guardian) => void) | null;
}

function GuardiansTable({ guardians, onEnd }: GuardiansTableProps) {
  return (
    <Table
      caption="Guardians"
      isCaptionHidden
      rows={guardians}
      rowKey={(guardian) => guardian.personId}
      empty="Nobody is on record."
      columns={[
        {
          key: "name",
          heading: "Name",
          isRowHeading: true,
          cell: (guardian) => <Link href={`/academy/people/${guardian.personId}`}>{fullName(guardian)}</Link>,
        },
        { key: "email", heading: "E-mail", cell: (guardian) => guardian.email ?? "" },
        { key: "phone", heading: "Telephone", cell: (guardian) => guardian.phone ?? "" },
        {
          ...ACTS_COLUMN,
          cell: (guardian) =>
            onEnd ? (
              <Button
                isSmall
                variant="link"
                onPress={() => onEnd(guardian)}
                aria-label={`End the guardianship of ${fullName(guardian)}`}
              >
                End
              </Button>
            ) : null,
        },
      ]}
    />
  );
}

type AddGuardianProps = Pick<AthleteSectionProps, "person" | "athlete"> & {
  adults: AthleteSectionProps["choices"]["adults"];
  onClose: () => void;
};

function AddGuardian({ person, athlete, adults, onClose }: AddGuardianProps) {
  const add = useCommand((api, input: { athleteId: string; guardian: GuardianChoice }, once) =>
    api.families.addGuardian.mutate(input, once),
  );
  async function submit(data: FormData) {
    const guardian = guardianOf(data, "guardian.");
    if (await add.run({ athleteId: athlete.athleteId, guardian })) onClose();
  }
  const standing = new Set(athlete.guardians.map((guardian) => guardian.personId));
  return (
    <FormDialog
      title={`Who else stands for ${person.givenName}?`}
      label="Guardian"
      submitText="Add the guardian"
      command={add}
      onSubmit={submit}
      onClose={onClose}
    >
      <GuardianFields adults={adults.filter((adult) => !standing.has(adult.personId))} prefix="guardian." />
    </FormDialog>
  );
}
