"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { ConfirmDialog } from "@/components/ui/confirm-dialog";
import { FormActions } from "@/components/ui/form";
import { Section } from "@/components/ui/section";
import { showToast } from "@/components/ui/toast";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { SignInState } from "@/server/domain/people/people-filter";
import { maySignIn } from "@/server/domain/people/person";
import type { PersonRecord } from "./person-record";

const SENTENCES: Record<SignInState, string> = {
  none: "Nobody invited them yet: they cannot sign in.",
  invited: "Invited, and not joined yet. The link works once, for a week.",
  joined: "They have joined and can sign in.",
  disabled: "Disabled: they cannot sign in.",
};

/** What a {@link SignInSection} takes. */
export interface SignInSectionProps {
  person: PersonRecord;
  today: string;
  isAdmin: boolean;
}

/** Whether a person can sign in: invited, disabled and let in again here. */
export function SignInSection({ person, today, isAdmin }: SignInSectionProps) {
  const { signIn, athlete } = person;
  const isTooYoung = athlete !== null && !maySignIn(athlete.bornOn, today);
  return (
    <Section title="Sign-in">
      <p>{isTooYoung ? "Under 13 there is no sign-in of one’s own: a guardian acts." : SENTENCES[signIn]}</p>
      {isAdmin && !isTooYoung ? <SignInActs person={person} /> : null}
    </Section>
  );
}

function SignInActs({ person }: { person: PersonRecord }) {
  const { personId, signIn } = person;
  const invite = useCommand((api, input: { personId: string }, once) =>
    api.invitations.send.mutate(input, once),
  );
  const enable = useCommand((api, input: { personId: string }, once) =>
    api.invitations.enable.mutate(input, once),
  );
  async function inviteNow() {
    if (await invite.run({ personId })) {
      showToast({ text: "The invitation is in the outbox, under Academy, Notices." });
    }
  }
  return (
    <>
      <CommandProblem problem={invite.problem ?? enable.problem} />
      <FormActions>
        {signIn === "none" || signIn === "invited" ? (
          <Button isSmall isPending={invite.pending} onPress={() => void inviteNow()}>
            {signIn === "none" ? "Invite" : "Invite again"}
          </Button>
        ) : null}
        {signIn === "disabled" ? (
          <Button isSmall isPending={enable.pending} onPress={() => void enable.run({ personId })}>
            Let them sign in again
          </Button>
        ) : null}
        {signIn === "joined" || signIn === "invited" ? <DisableSignIn person={person} /> : null}
      </FormActions>
    </>
  );
}

function DisableSignIn({ person }: { person: PersonRecord }) {
  const [isAsking, setIsAsking] = useState(false);
  const disable = useCommand((api, input: { personId: string }, once) =>
    api.invitations.disable.mutate(input, once),
  );
  async function disableNow() {
    await disable.run({ personId: person.personId });
    setIsAsking(false);
  }
  return (
    <>
      <Button isSmall onPress={() => setIsAsking(true)}>
        Disable the sign-in
      </Button>
      <CommandProblem problem={disable.problem} />
      <ConfirmDialog
        title={`Disable the sign-in of ${person.givenName}?`}
        confirmText="Disable it now"
        isOpen={isAsking}
        isPending={disable.pending}
        onConfirm={() => void disableNow()}
        onCancel={() => setIsAsking(false)}
      >
        They are out at once, on every device. Nothing they wrote is lost, and they can be let in again.
      </ConfirmDialog>
    </>
  );
}
