"use client";
import { useRouter } from "next/navigation";
import { useState } from "react";
import { AcademyPage } from "@/components/academy/academy-page";
import { AcademyPlace } from "@/components/academy/academy-place";
import { Button } from "@/components/ui/button";
import { Form, FormActions, FormPart } from "@/components/ui/form";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import { SelectField } from "@/components/ui/select-field";
import { CommandProblem } from "@/components/wire/command-problem";
import { textOf } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";
import type { AthleteRecord } from "@/server/domain/people/athlete-record";
import { isOfAge } from "@/server/domain/people/person";
import type { GuardianChoice } from "@/server/domain/people/person-details";
import { AthleteFields, type Choices, coachOptions, NO_COACH, recordOf } from "./athlete-fields";
import { GuardianFields, guardianOf } from "./guardian-fields";
import { PersonFields } from "./person-fields";

type NewAthlete = AthleteRecord & { coachPersonId: string | null; guardians: GuardianChoice[] };

/** Adds an athlete with those who stand for them. */
export function AddAthlete({ choices, today }: { choices: Choices; today: string }) {
  const router = useRouter();
  const [bornOn, setBornOn] = useState<string | null>(null);
  const [keys, setKeys] = useState([0]);
  const isMinor = bornOn === null || !isOfAge(bornOn, today);
  const guardianKeys = isMinor && keys.length === 0 ? [0] : keys;
  const add = useCommand((api, input: NewAthlete, once) => api.families.addAthlete.mutate(input, once), {
    refresh: false,
  });
  async function submit(data: FormData) {
    const coach = textOf(data, "coachPersonId");
    const answer = await add.run({
      ...recordOf(data),
      coachPersonId: coach === "" || coach === NO_COACH ? null : coach,
      guardians: guardianKeys.map((_, index) => guardianOf(data, `guardians.${index}.`)),
    });
    if (answer) router.push(`/academy/people/${answer.personId}`);
  }
  return (
    <AcademyPage>
      <PageHeading
        question="Who is the new athlete, and who stands for them?"
        place={<AcademyPlace href="/academy/people" label="People" />}
        detail="Under 18, a guardian must be on record. Under 13 there is no sign-in of one’s own: the guardian acts."
      />
      <CommandProblem problem={add.problem} isBesideFields />
      <Form
        onSubmit={(data) => void submit(data)}
        errors={add.problem?.fields ?? {}}
        aria-label="New athlete"
      >
        <Section title="The athlete">
          <FormPart>
            <PersonFields />
            <AthleteFields choices={choices} today={today} onBornOn={setBornOn} />
            <SelectField
              label="Coach"
              name="coachPersonId"
              defaultValue={choices.coaches[0]?.personId ?? NO_COACH}
              options={coachOptions(choices)}
            />
          </FormPart>
        </Section>
        <Guardians keys={guardianKeys} setKeys={setKeys} isMinor={isMinor} adults={choices.adults} />
        <FormActions>
          <Button type="submit" variant="primary" isPending={add.pending}>
            Add the athlete
          </Button>
          <LinkButton href="/academy/people">Leave it</LinkButton>
        </FormActions>
      </Form>
    </AcademyPage>
  );
}

interface GuardiansProps {
  keys: readonly number[];
  setKeys: (keys: number[]) => void;
  isMinor: boolean;
  adults: Choices["adults"];
}

function Guardians({ keys, setKeys, isMinor, adults }: GuardiansProps) {
  const canTakeOut = !isMinor || keys.length > 1;
  return (
    <>
      {keys.map((key, index) => (
        <Section
          key={key}
          title={keys.length > 1 ? `Guardian ${index + 1}` : "Guardian"}
          aside={
            canTakeOut ? (
              <Button isSmall variant="link" onPress={() => setKeys(keys.filter((each) => each !== key))}>
                Leave out
              </Button>
            ) : null
          }
        >
          <FormPart>
            <GuardianFields adults={adults} prefix={`guardians.${index}.`} />
          </FormPart>
        </Section>
      ))}
      {keys.length < 6 ? (
        <div>
          <Button isSmall onPress={() => setKeys([...keys, Math.max(-1, ...keys) + 1])}>
            {keys.length === 0 ? "Add a guardian" : "Add another guardian"}
          </Button>
        </div>
      ) : null}
    </>
  );
}
