import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { firstScreenOf } from "@/components/people/first-screen";
import { SignInForm } from "@/components/people/sign-in-form";
import { pageActor, read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Sign in" };

export default async function SignInPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  if (await pageActor()) redirect(firstScreenOf(await read((api) => api.account.me({}))));
  const { exists } = await read((api) => api.account.academyExists({}));
  if (!exists) redirect("/first");
  const { email } = await searchParams;
  return <SignInForm email={typeof email === "string" ? email : ""} />;
}
