"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { ConfirmDialog } from "@/components/ui/confirm-dialog";
import { FormActions } from "@/components/ui/form";
import { Section } from "@/components/ui/section";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { STAFF_ROLES, type StaffRole } from "@/server/domain/people/person";
import type { PersonRecord } from "./person-record";

const ROLE_WORDS: Record<StaffRole, string> = { admin: "admin", coach: "coach" };

const AFTERWARDS: Record<StaffRole, string> = {
  admin: "They can no longer change settings, people and prices, or see the ledger.",
  coach: "Their athletes are left without a coach until they are assigned anew. What they wrote stays.",
};

/** What a person does for the academy: granted and ended here, at once. */
export function RolesSection({ person, isAdmin }: { person: PersonRecord; isAdmin: boolean }) {
  const [ending, setEnding] = useState<StaffRole | null>(null);
  const grant = useCommand((api, input: { personId: string; role: StaffRole }, once) =>
    api.people.grantRole.mutate(input, once),
  );
  const end = useCommand((api, input: { personId: string; role: StaffRole }, once) =>
    api.people.endRole.mutate(input, once),
  );
  async function endNow() {
    if (ending) await end.run({ personId: person.personId, role: ending });
    setEnding(null);
  }
  const words = person.roles.map((role) => ROLE_WORDS[role]).join(" and ");
  return (
    <Section title="Work at the academy">
      <CommandProblem problem={grant.problem ?? end.problem} />
      <p>{words ? `Is ${words}.` : "None."}</p>
      {isAdmin ? (
        <FormActions>
          {STAFF_ROLES.map((role) =>
            person.roles.includes(role) ? (
              <Button key={role} isSmall onPress={() => setEnding(role)}>
                End being {role === "admin" ? "an admin" : "a coach"}
              </Button>
            ) : (
              <Button
                key={role}
                isSmall
                isPending={grant.pending}
                onPress={() => void grant.run({ personId: person.personId, role })}
              >
                Make {role === "admin" ? "an admin" : "a coach"}
              </Button>
            ),
          )}
        </FormActions>
      ) : null}
      <ConfirmDialog
        title={`Is ${person.givenName} no longer ${ending === "admin" ? "an admin" : "a coach"}?`}
        confirmText="End it now"
        isOpen={ending !== null}
        isPending={end.pending}
        onConfirm={() => void endNow()}
        onCancel={() => setEnding(null)}
      >
        {ending ? AFTERWARDS[ending] : null}
      </ConfirmDialog>
    </Section>
  );
}
