import Link from "next/link";
import { Table } from "@/components/ui/table";
import type { Answers } from "@/components/wire/answers";
import { hasLeft } from "@/server/domain/people/leaving";
import type { SignInState } from "@/server/domain/people/people-filter";
import { fullName } from "@/server/domain/people/person";
import { ageOn } from "@/server/domain/time/calendar-day";

type Row = Answers["people"]["list"]["rows"][number];

/** Where a sign-in stands, in words. */
export const SIGN_IN_WORDS: Record<SignInState, string> = {
  none: "not invited",
  invited: "invited, not joined",
  joined: "joined",
  disabled: "disabled",
};

/** What a {@link PeopleTable} takes. */
export interface PeopleTableProps {
  rows: readonly Row[];
  today: string;
  /** Whether a search or a kind narrows the list. */
  isNarrowed: boolean;
}

/** People by name, with what they are and whether they can sign in. */
export function PeopleTable({ rows, today, isNarrowed }: PeopleTableProps) {
  return (
    <Table
      caption="People on record"
      isCaptionHidden
      rows={rows}
      rowKey={(row) => row.personId}
      empty={isNarrowed ? "Nobody fits. Search for less, or look at all." : "Nobody is on record yet."}
      columns={[
        {
          key: "name",
          heading: "Name",
          isRowHeading: true,
          cell: (row) => <Link href={`/academy/people/${row.personId}`}>{fullName(row)}</Link>,
        },
        { key: "is", heading: "Is", cell: (row) => whatTheyAre(row, today) },
        { key: "coach", heading: "Coach", cell: (row) => row.athlete?.coachName ?? "" },
        { key: "email", heading: "E-mail", cell: (row) => row.email ?? "" },
        { key: "signIn", heading: "Sign-in", cell: (row) => SIGN_IN_WORDS[row.signIn] },
      ]}
    />
  );
}

/** What a person is to the academy, in words: "athlete, 12", "coach", "guardian of Kit and Robin". */
function whatTheyAre(row: Row, today: string): string {
  const words: string[] = [...row.roles];
  if (row.athlete) {
    words.push(
      hasLeft(row.athlete.leftOn, today)
        ? "athlete who left"
        : `athlete, ${ageOn(row.athlete.bornOn, today)}`,
    );
  }
  if (row.standsFor.length > 0) {
    const names = row.standsFor.map((ward) => ward.givenName);
    words.push(`guardian of ${new Intl.ListFormat("en-GB").format(names)}`);
  }
  return words.join("; ") || "nothing at present";
}
