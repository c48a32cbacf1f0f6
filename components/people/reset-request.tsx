"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { Form, FormActions } from "@/components/ui/form";
import { LinkButton } from "@/components/ui/link-button";
import { Notice } from "@/components/ui/notice";
import { PageHeading } from "@/components/ui/page-heading";
import { TextField } from "@/components/ui/text-field";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";

/** Asks for a reset link; says the same whether or not there is an account. */
export function ResetRequest() {
  const [sent, setSent] = useState(false);
  const ask = useCommand((api, input: { email: string }, once) => api.account.askReset.mutate(input, once));

  async function submit(data: FormData) {
    if (await ask.run({ email: String(data.get("email")).trim() })) setSent(true);
  }

  return (
    <>
      <PageHeading question="Where should the reset link go?" />
      <CommandProblem problem={ask.problem} />
      {sent ? (
        <Notice kind="held" title="A link is on its way if that e-mail has an account.">
          It works once, for an hour. Where the academy sends no e-mail, an admin finds it under Academy,
          Notices.
        </Notice>
      ) : null}
      <Form onSubmit={submit} errors={ask.problem?.fields} aria-label="Ask for a reset link">
        <TextField label="E-mail" name="email" type="email" autoComplete="username" isRequired />
        <FormActions>
          <Button type="submit" isPending={ask.pending}>
            Send the link
          </Button>
          <LinkButton href="/sign-in" variant="link">
            Back to sign in
          </LinkButton>
        </FormActions>
      </Form>
    </>
  );
}
