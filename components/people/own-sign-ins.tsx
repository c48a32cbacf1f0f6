"use client";
import { Button } from "@/components/ui/button";
import { Notice } from "@/components/ui/notice";
import { PageHeading } from "@/components/ui/page-heading";
import { ACTS_COLUMN, Table } from "@/components/ui/table";
import { TimeText } from "@/components/ui/time-text";
import type { Answers } from "@/components/wire/answers";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { momentInWords } from "@/server/domain/time/words";
import { leaveDevice } from "./leave-device";
import type { Me } from "./me";

type SignIn = Answers["account"]["signIns"][number];

/** What an {@link OwnSignIns} takes. */
export interface OwnSignInsProps {
  me: Pick<Me, "roles" | "athletes">;
  signIns: readonly SignIn[];
  /** IANA zone in which the times are shown. */
  zone: string;
}

/** Where a person is signed in, each with the way to end it at once. */
export function OwnSignIns({ me, signIns, zone }: OwnSignInsProps) {
  const end = useCommand((api, input: { signInId: string }, once) =>
    api.account.endSignIn.mutate(input, once),
  );
  const hasNoScreens = me.roles.length === 0 && me.athletes.length === 0;
  return (
    <>
      <PageHeading
        question="Where are you signed in?"
        detail={`One you do not know? End it: it is out at once. Then set a new password. Times are by the clock of ${zone}.`}
      />
      {hasNoScreens ? (
        <Notice isStatic title="There is nothing else for you here at present.">
          You are no athlete, guardian or member of staff on record. Ask your academy if that is wrong.
        </Notice>
      ) : null}
      <CommandProblem problem={end.problem} />
      <Table
        caption="Your sign-ins"
        isCaptionHidden
        rows={signIns}
        rowKey={(row) => row.id}
        isCurrent={(row) => row.isThis}
        columns={[
          { key: "device", heading: "Device", isRowHeading: true, cell: (row) => row.device },
          {
            key: "since",
            heading: "Since",
            cell: (row) => (
              <TimeText dateTime={row.createdAtMs}>{momentInWords(row.createdAtMs, zone)}</TimeText>
            ),
          },
          {
            ...ACTS_COLUMN,
            cell: (row) => (
              <Button
                isSmall
                isPending={end.pending}
                onPress={() => void (row.isThis ? leaveDevice() : end.run({ signInId: row.id }))}
              >
                {row.isThis ? "Sign out here" : "End it"}
              </Button>
            ),
          },
        ]}
      />
    </>
  );
}
