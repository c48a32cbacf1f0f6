"use client";
import { useRouter } from "next/navigation";
import { signIn } from "next-auth/react";
import { Button } from "@/components/ui/button";
import { Checkbox } from "@/components/ui/checkbox";
import { Form, FormActions, FormPart, FormRow } from "@/components/ui/form";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import { TextField } from "@/components/ui/text-field";
import { CommandProblem } from "@/components/wire/command-problem";
import { textOf } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";
import { ZoneField } from "./zone-field";

function startOf(data: FormData) {
  return {
    academyName: textOf(data, "academyName"),
    currency: textOf(data, "currency").toUpperCase(),
    siteName: textOf(data, "siteName"),
    zone: textOf(data, "zone"),
    givenName: textOf(data, "givenName"),
    familyName: textOf(data, "familyName"),
    email: textOf(data, "email"),
    password: String(data.get("password") ?? ""),
    isCoach: data.get("isCoach") !== null,
  };
}

/** The first visit to an empty academy: its name, its first site, its first admin. */
export function StartAcademy({ zone }: { zone: string }) {
  const router = useRouter();
  const start = useCommand(
    (api, input: ReturnType<typeof startOf>, once) => api.account.startAcademy.mutate(input, once),
    { refresh: false },
  );

  async function submit(data: FormData) {
    const input = startOf(data);
    if (!(await start.run(input))) return;
    const { email, password } = input;
    const answer = await signIn("credentials", { redirect: false, email, password });
    router.replace(answer?.ok ? "/academy" : "/sign-in");
    router.refresh();
  }

  return (
    <>
      <PageHeading
        question="Whose academy is this?"
        detail="Nothing is here yet. These few lines make the academy, its first site and you as its first admin; hours, lanes, coaches and athletes come next."
      />
      <CommandProblem problem={start.problem} isBesideFields />
      <Form onSubmit={submit} errors={start.problem?.fields} aria-label="Start the academy">
        <Section title="The academy">
          <FormRow>
            <TextField
              label="Name"
              name="academyName"
              autoComplete="organization"
              isRequired
              maxLength={80}
            />
            <TextField label="Currency" name="currency" defaultValue="USD" maxLength={3} isRequired />
          </FormRow>
        </Section>
        <Section title="Its first site">
          <FormPart>
            <TextField
              label="Name of the site"
              name="siteName"
              hint="More can follow."
              isRequired
              maxLength={60}
            />
            <ZoneField name="zone" defaultValue={zone} />
          </FormPart>
        </Section>
        <Section title="You">
          <FormPart>
            <FormRow>
              <TextField label="Given name" name="givenName" autoComplete="given-name" isRequired />
              <TextField label="Family name" name="familyName" autoComplete="family-name" isRequired />
            </FormRow>
            <TextField label="E-mail" name="email" type="email" autoComplete="username" isRequired />
            <TextField
              label="Password"
              name="password"
              type="password"
              autoComplete="new-password"
              hint="At least 15 characters; four unrelated words are a good one."
              isRequired
            />
            <Checkbox label="I coach as well" name="isCoach" />
          </FormPart>
        </Section>
        <FormActions>
          <Button type="submit" variant="primary" isPending={start.pending} pendingText="Making it…">
            Start the academy
          </Button>
        </FormActions>
      </Form>
    </>
  );
}
