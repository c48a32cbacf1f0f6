"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { DefinitionList } from "@/components/ui/definition-list";
import { FormActions, FormRow } from "@/components/ui/form";
import { LinkButton } from "@/components/ui/link-button";
import { NumberField } from "@/components/ui/number-field";
import { RadioChoice } from "@/components/ui/radio-choice";
import { Section } from "@/components/ui/section";
import { SelectField } from "@/components/ui/select-field";
import { FormDialog } from "@/components/wire/form-dialog";
import { numberOrNull, textOf } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";
import { heightInWords } from "@/server/domain/people/height-in-words";
import { hasLeft } from "@/server/domain/people/leaving";
import { fullName, type ThrowingHand } from "@/server/domain/people/person";
import { ageOn } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { type Choices, coachOptions, NO_COACH } from "./athlete-fields";
import { Leaving } from "./leaving";
import type { AthletePart, PersonRecord } from "./person-record";

/** What an {@link AthleteSection} takes. */
export interface AthleteSectionProps {
  person: PersonRecord;
  athlete: AthletePart;
  choices: Choices;
  today: string;
  isAdmin: boolean;
}

/** The arm: age, hand, height, home site, rule book, coach; what any coach may measure, whom an admin may assign. */
export function AthleteSection({ person, athlete, choices, today, isAdmin }: AthleteSectionProps) {
  const [open, setOpen] = useState<"arm" | "coach" | null>(null);
  const coach = choices.coaches.find((each) => each.personId === athlete.coachPersonId);
  const book = choices.ruleBooks.find((each) => each.id === athlete.ruleBookId);
  const born = dayInWords(athlete.bornOn, { withYear: true });
  return (
    <Section
      title="Athlete"
      aside={
        <LinkButton isSmall variant="link" href={`/athletes/${athlete.athleteId}`}>
          To the season
        </LinkButton>
      }
    >
      <DefinitionList
        items={[
          { term: "Age", detail: `${ageOn(athlete.bornOn, today)}, born ${born}` },
          { term: "Throws with the", detail: `${athlete.throws} hand` },
          {
            term: "Height",
            detail: athlete.heightCm === null ? "not measured" : heightInWords(athlete.heightCm),
          },
          { term: "Home site", detail: athlete.siteName },
          { term: "Rule book", detail: book?.name ?? athlete.ruleBookId },
          { term: "Coach", detail: coach ? fullName(coach) : "nobody yet" },
          { term: "Joined", detail: dayInWords(athlete.joinedOn, { withYear: true }) },
          ...(athlete.leftOn === null
            ? []
            : [
                {
                  term: hasLeft(athlete.leftOn, today) ? "Left on" : "Leaves on",
                  detail: dayInWords(athlete.leftOn, { withYear: true }),
                },
              ]),
        ]}
      />
      <FormActions>
        {isAdmin ? (
          <>
            <Button isSmall onPress={() => setOpen("coach")}>
              Assign a coach
            </Button>
            <Leaving person={person} athlete={athlete} today={today} />
          </>
        ) : (
          <Button isSmall onPress={() => setOpen("arm")}>
            Write down height or hand
          </Button>
        )}
      </FormActions>
      {open === "coach" ? (
        <CoachDialog person={person} athlete={athlete} choices={choices} onClose={() => setOpen(null)} />
      ) : null}
      {open === "arm" ? <ArmDialog person={person} athlete={athlete} onClose={() => setOpen(null)} /> : null}
    </Section>
  );
}

type PartDialogProps = Pick<AthleteSectionProps, "person" | "athlete"> & { onClose: () => void };

function CoachDialog({ person, athlete, choices, onClose }: PartDialogProps & { choices: Choices }) {
  const assign = useCommand((api, input: { athleteId: string; coachPersonId: string | null }, once) =>
    api.families.assignCoach.mutate(input, once),
  );
  async function submit(data: FormData) {
    const coach = textOf(data, "coachPersonId");
    const coachPersonId = coach === NO_COACH ? null : coach;
    if (await assign.run({ athleteId: athlete.athleteId, coachPersonId })) onClose();
  }
  return (
    <FormDialog
      title={`Who coaches ${person.givenName}?`}
      label="Coach"
      submitText="Assign"
      command={assign}
      onSubmit={submit}
      onClose={onClose}
    >
      <SelectField
        label="Coach"
        name="coachPersonId"
        hint="Rounds and sessions already in hand stay with whom they are."
        defaultValue={athlete.coachPersonId ?? NO_COACH}
        options={coachOptions(choices)}
      />
    </FormDialog>
  );
}

interface Arm {
  athleteId: string;
  version: number;
  throws: ThrowingHand;
  heightCm: number | null;
}

function ArmDialog({ person, athlete, onClose }: PartDialogProps) {
  const save = useCommand((api, input: Arm, once) => api.families.editArm.mutate(input, once));
  async function submit(data: FormData) {
    const throws = textOf(data, "throws") === "left" ? "left" : "right";
    const { athleteId, version } = athlete;
    if (await save.run({ athleteId, version, throws, heightCm: numberOrNull(data, "heightCm") })) onClose();
  }
  return (
    <FormDialog
      title={`Height and hand of ${person.givenName}`}
      label="Height and hand"
      submitText="Save"
      command={save}
      onSubmit={submit}
      onClose={onClose}
    >
      <FormRow>
        <NumberField
          label="Height"
          name="heightCm"
          defaultValue={athlete.heightCm}
          min={80}
          max={230}
          unit="cm"
          isOptional
        />
        <RadioChoice
          label="Throws with the"
          name="throws"
          defaultValue={athlete.throws}
          options={[
            { value: "right", label: "Right" },
            { value: "left", label: "Left" },
          ]}
        />
      </FormRow>
    </FormDialog>
  );
}
