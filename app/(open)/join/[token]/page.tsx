import type { Metadata } from "next";
import { NewPassword } from "@/components/people/new-password";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { pageCaller } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Choose a password", referrer: "no-referrer" };

export default async function JoinPage({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params;
  const link = await (await pageCaller()).account.link({ token }).catch(() => null);
  if (link) return <NewPassword token={token} link={link} />;
  return (
    <PageHeading
      question="This link does not work any more"
      detail="It was used already or has expired. Nothing was changed. Ask for a new one, or ask your academy to invite you again."
      actions={<LinkButton href="/forgot">Ask for a new link</LinkButton>}
    />
  );
}
