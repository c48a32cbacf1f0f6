"use client";
import { useRouter } from "next/navigation";
import { AcademyPage } from "@/components/academy/academy-page";
import { AcademyPlace } from "@/components/academy/academy-place";
import { Button } from "@/components/ui/button";
import { Form, FormActions, FormPart } from "@/components/ui/form";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { AthleteRecord } from "@/server/domain/people/athlete-record";
import { fullName } from "@/server/domain/people/person";
import { AthleteFields, type Choices, recordOf } from "./athlete-fields";
import { PersonFields } from "./person-fields";
import type { AthletePart, PersonRecord } from "./person-record";

/** What an {@link EditAthlete} takes. */
export interface EditAthleteProps {
  person: PersonRecord;
  athlete: AthletePart;
  choices: Choices;
  today: string;
}

/** Changes what is written down of an athlete. */
export function EditAthlete({ person, athlete, choices, today }: EditAthleteProps) {
  const router = useRouter();
  const back = `/academy/people/${person.personId}`;
  const save = useCommand((api, input: AthleteRecord & { athleteId: string; version: number }, once) =>
    api.families.editAthlete.mutate(input, once),
  );
  async function submit(data: FormData) {
    const { athleteId, version } = athlete;
    if (await save.run({ ...recordOf(data), athleteId, version })) router.push(back);
  }
  return (
    <AcademyPage>
      <PageHeading
        question={`What is to change about ${person.givenName}?`}
        place={<AcademyPlace href={back} label={fullName(person)} />}
        detail="A new birth date, hand or rule book holds at once: limits and rest days are worked out anew from what was logged."
      />
      <CommandProblem problem={save.problem} isBesideFields />
      <Form onSubmit={(data) => void submit(data)} errors={save.problem?.fields ?? {}} aria-label="Athlete">
        <Section title="Name and addresses">
          <FormPart>
            <PersonFields person={person} />
          </FormPart>
        </Section>
        <Section title="The arm">
          <FormPart>
            <AthleteFields choices={choices} today={today} athlete={athlete} />
          </FormPart>
        </Section>
        <FormActions>
          <Button type="submit" variant="primary" isPending={save.pending}>
            Save the record
          </Button>
          <LinkButton href={back}>Leave it</LinkButton>
        </FormActions>
      </Form>
    </AcademyPage>
  );
}
