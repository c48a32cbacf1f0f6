"use client";
import { useRouter } from "next/navigation";
import { Button } from "@/components/ui/button";
import { Form, FormActions } from "@/components/ui/form";
import { PageHeading } from "@/components/ui/page-heading";
import { TextField } from "@/components/ui/text-field";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";

interface NewPasswordProps {
  token: string;
  link: { purpose: "invitation" | "reset"; givenName: string; email: string };
}

/** Spends an invitation or reset link by choosing a password. */
export function NewPassword({ token, link }: NewPasswordProps) {
  const router = useRouter();
  const spend = useCommand(
    (api, input: { token: string; password: string }, once) => api.account.useLink.mutate(input, once),
    { refresh: false },
  );

  async function submit(data: FormData) {
    const answer = await spend.run({ token, password: String(data.get("password")) });
    if (answer) router.replace(`/sign-in?email=${encodeURIComponent(answer.email)}`);
  }

  return (
    <>
      <PageHeading
        question={
          link.purpose === "invitation" ? `Welcome, ${link.givenName}` : `A new password, ${link.givenName}`
        }
        detail={`You sign in as ${link.email}. Choose a password of at least 15 characters; four unrelated words are a good one.`}
      />
      <CommandProblem problem={spend.problem} />
      <Form onSubmit={submit} aria-label="Choose a password">
        <TextField
          label="New password"
          name="password"
          type="password"
          autoComplete="new-password"
          isRequired
        />
        <FormActions>
          <Button type="submit" isPending={spend.pending}>
            Keep this password
          </Button>
        </FormActions>
      </Form>
    </>
  );
}
