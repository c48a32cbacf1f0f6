import { redirect } from "next/navigation";
import { firstScreenOf } from "@/components/people/first-screen";
import { pageActor, read } from "@/server/api/page-caller";

/** Leads everybody to their own first screen. */
export default async function FirstPage() {
  if (await pageActor()) redirect(firstScreenOf(await read((api) => api.account.me({}))));
  const { exists } = await read((api) => api.account.academyExists({}));
  redirect(exists ? "/sign-in" : "/first");
}
