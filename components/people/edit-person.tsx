"use client";
import { useRouter } from "next/navigation";
import { AcademyPage } from "@/components/academy/academy-page";
import { AcademyPlace } from "@/components/academy/academy-place";
import { Button } from "@/components/ui/button";
import { Form, FormActions } from "@/components/ui/form";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { fullName } from "@/server/domain/people/person";
import type { PersonDetails } from "@/server/domain/people/person-details";
import { PersonFields, personOf } from "./person-fields";
import type { PersonRecord } from "./person-record";

/** Changes the names and addresses of somebody who is no athlete. */
export function EditPerson({ person }: { person: PersonRecord }) {
  const router = useRouter();
  const back = `/academy/people/${person.personId}`;
  const save = useCommand((api, input: PersonDetails & { personId: string }, once) =>
    api.people.edit.mutate(input, once),
  );
  async function submit(data: FormData) {
    if (await save.run({ ...personOf(data), personId: person.personId })) router.push(back);
  }
  return (
    <AcademyPage>
      <PageHeading
        question={`What is to change about ${person.givenName}?`}
        place={<AcademyPlace href={back} label={fullName(person)} />}
        detail={person.signIn === "none" ? undefined : "They sign in by this e-mail from then on."}
      />
      <CommandProblem problem={save.problem} isBesideFields />
      <Form onSubmit={(data) => void submit(data)} errors={save.problem?.fields ?? {}} aria-label="Person">
        <PersonFields person={person} />
        <FormActions>
          <Button type="submit" variant="primary" isPending={save.pending}>
            Save the changes
          </Button>
          <LinkButton href={back}>Leave it</LinkButton>
        </FormActions>
      </Form>
    </AcademyPage>
  );
}
