import Link from "next/link";
import { AcademyPage } from "@/components/academy/academy-page";
import { AcademyPlace } from "@/components/academy/academy-place";
import { DefinitionList } from "@/components/ui/definition-list";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import { fullName } from "@/server/domain/people/person";
import type { Choices } from "./athlete-fields";
import { AthleteSection } from "./athlete-section";
import { GuardiansSection } from "./guardians-section";
import type { PersonRecord } from "./person-record";
import styles from "./plain-list.module.css";
import { RolesSection } from "./roles-section";
import { SignInSection } from "./sign-in-section";

/** What a {@link PersonScreen} takes. */
export interface PersonScreenProps {
  person: PersonRecord;
  choices: Choices;
  today: string;
  isAdmin: boolean;
}

/** One person: how they are reached, what they are to the academy, whether they can sign in. */
export function PersonScreen({ person, choices, today, isAdmin }: PersonScreenProps) {
  const { athlete } = person;
  const isStaff = person.roles.length > 0;
  return (
    <AcademyPage>
      <PageHeading
        question={`Who is ${fullName(person)}?`}
        place={<AcademyPlace href="/academy/people" label="People" />}
        actions={
          isAdmin ? (
            <LinkButton href={`/academy/people/${person.personId}/edit`}>
              {athlete ? "Change the record" : "Change name or addresses"}
            </LinkButton>
          ) : null
        }
      />
      <Section title="Reached by">
        <DefinitionList
          items={[
            { term: "E-mail", detail: person.email ?? "not on record" },
            { term: "Telephone", detail: person.phone ?? "not on record" },
          ]}
        />
      </Section>
      {athlete ? (
        <>
          <AthleteSection
            person={person}
            athlete={athlete}
            choices={choices}
            today={today}
            isAdmin={isAdmin}
          />
          <GuardiansSection
            person={person}
            athlete={athlete}
            choices={choices}
            today={today}
            isAdmin={isAdmin}
          />
        </>
      ) : null}
      {person.standsFor.length > 0 ? (
        <Section title="Stands for">
          <ul className={styles.list}>
            {person.standsFor.map((ward) => (
              <li key={ward.athleteId}>
                <Link href={`/academy/people/${ward.personId}`}>{fullName(ward)}</Link>
              </li>
            ))}
          </ul>
        </Section>
      ) : null}
      {isStaff || (isAdmin && !athlete) ? <RolesSection person={person} isAdmin={isAdmin} /> : null}
      <SignInSection person={person} today={today} isAdmin={isAdmin} />
    </AcademyPage>
  );
}
