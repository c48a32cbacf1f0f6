"use client";
import { useRouter } from "next/navigation";
import { signIn } from "next-auth/react";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { Form, FormActions } from "@/components/ui/form";
import { LinkButton } from "@/components/ui/link-button";
import { Notice } from "@/components/ui/notice";
import { PageHeading } from "@/components/ui/page-heading";
import { TextField } from "@/components/ui/text-field";

const WRONG = "That e-mail and password do not go together. Check both, or ask for a reset link.";
const OFFLINE = "The academy cannot be reached. Check the connection and try again.";

/** E-mail and password; leads to the person's first screen. */
export function SignInForm({ email }: { email: string }) {
  const router = useRouter();
  const [pending, setPending] = useState(false);
  const [problem, setProblem] = useState("");

  async function submit(data: FormData) {
    setPending(true);
    setProblem("");
    try {
      const answer = await signIn("credentials", {
        redirect: false,
        email: String(data.get("email")),
        password: String(data.get("password")),
      });
      if (answer?.ok) {
        router.replace("/");
        router.refresh();
        return;
      }
      setProblem(answer?.error && answer.error !== "CredentialsSignin" ? answer.error : WRONG);
    } catch {
      setProblem(OFFLINE);
    }
    setPending(false);
  }

  return (
    <>
      <PageHeading question="Who is there?" detail="Sign in with the e-mail your academy knows." />
      {problem ? <Notice kind="refusal">{problem}</Notice> : null}
      <Form onSubmit={submit} aria-label="Sign in">
        <TextField
          label="E-mail"
          name="email"
          type="email"
          autoComplete="username"
          defaultValue={email}
          isRequired
        />
        <TextField
          label="Password"
          name="password"
          type="password"
          autoComplete="current-password"
          isRequired
        />
        <FormActions>
          <Button type="submit" isPending={pending} pendingText="Signing in…">
            Sign in
          </Button>
          <LinkButton href="/forgot" variant="link">
            Set a new password
          </LinkButton>
        </FormActions>
      </Form>
    </>
  );
}
