import { notFound } from "next/navigation";
import type { ReactNode } from "react";
import { FamilyFrame } from "@/components/people/family-frame";
import { chosenTheme } from "@/components/shell/chosen-theme";
import { KeepPage } from "@/components/throwing/keep-page";
import { read } from "@/server/api/page-caller";
import { env } from "@/server/env";

export default async function FamilyLayout({
  children,
  params,
}: {
  children: ReactNode;
  params: Promise<{ athleteId: string }>;
}) {
  const { athleteId } = await params;
  const me = await read((api) => api.account.me({}));
  const athlete = me.athletes.find((each) => each.athleteId === athleteId);
  if (!athlete) notFound();
  return (
    <FamilyFrame me={me} athlete={athlete} theme={await chosenTheme()}>
      {/* Scripts change under the same name while developing: nothing is kept then. */}
      {env.NODE_ENV === "production" ? <KeepPage /> : null}
      {children}
    </FamilyFrame>
  );
}
