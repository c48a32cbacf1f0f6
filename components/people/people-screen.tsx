"use client";
import Link from "next/link";
import { useRouter } from "next/navigation";
import { useState } from "react";
import { AcademyPlace } from "@/components/academy/academy-place";
import { Button } from "@/components/ui/button";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { Pagination } from "@/components/ui/pagination";
import { SearchField } from "@/components/ui/search-field";
import type { Answers } from "@/components/wire/answers";
import { PERSON_KINDS, type PeopleFilter, type PersonKind } from "@/server/domain/people/people-filter";
import styles from "./people-screen.module.css";
import { PeopleTable } from "./people-table";
import { StaffDialog } from "./staff-dialog";

/** What a {@link PeopleScreen} takes. */
export interface PeopleScreenProps {
  people: Answers["people"]["list"];
  filter: PeopleFilter;
  page: number;
  today: string;
  isAdmin: boolean;
}

const KIND_WORDS: Record<PersonKind, string> = {
  athlete: "Athletes",
  guardian: "Guardians",
  coach: "Coaches",
  admin: "Admins",
};

function hrefFor({ search, kind }: PeopleFilter, page = 1): string {
  const query = new URLSearchParams({
    ...(search ? { search } : {}),
    ...(kind ? { kind } : {}),
    ...(page > 1 ? { page: String(page) } : {}),
  });
  return `/academy/people${query.size > 0 ? `?${query}` : ""}`;
}

/** Everybody on record: who they are to the academy, and whether they can sign in. */
export function PeopleScreen({ people, filter, page, today, isAdmin }: PeopleScreenProps) {
  const router = useRouter();
  const [isAdding, setIsAdding] = useState(false);
  return (
    <>
      <PageHeading
        question="Who belongs to the academy?"
        place={<AcademyPlace />}
        actions={
          isAdmin ? (
            <>
              <LinkButton href="/academy/people/new">Add an athlete</LinkButton>
              <Button onPress={() => setIsAdding(true)}>Add a coach or admin</Button>
            </>
          ) : null
        }
      />
      <div className={styles.narrow}>
        <SearchField
          key={filter.search}
          label="Search by name or e-mail"
          isLabelHidden
          defaultValue={filter.search}
          onSubmit={(search) => router.replace(hrefFor({ ...filter, search: search.trim() }))}
        />
        <nav aria-label="Kinds of people" className={styles.kinds}>
          <Kind href={hrefFor({ ...filter, kind: null })} isCurrent={filter.kind === null} text="All" />
          {PERSON_KINDS.map((kind) => (
            <Kind
              key={kind}
              href={hrefFor({ ...filter, kind })}
              isCurrent={filter.kind === kind}
              text={KIND_WORDS[kind]}
            />
          ))}
        </nav>
      </div>
      <PeopleTable
        rows={people.rows}
        today={today}
        isNarrowed={filter.search !== "" || filter.kind !== null}
      />
      <Pagination
        page={page}
        pageSize={people.pageSize}
        total={people.total}
        noun="people"
        hrefFor={(to) => hrefFor(filter, to)}
      />
      {isAdding ? <StaffDialog onClose={() => setIsAdding(false)} /> : null}
    </>
  );
}

function Kind({ href, isCurrent, text }: { href: string; isCurrent: boolean; text: string }) {
  return (
    <Link href={href} className={styles.kind} aria-current={isCurrent ? "true" : undefined}>
      {text}
    </Link>
  );
}
