import { redirect } from "next/navigation";
import { firstScreenOf } from "@/components/people/first-screen";
import { pageActor, read } from "@/server/api/page-caller";

/** Leads everybody to their own first screen. */
export default async function FirstPage() {
  const actor = await pageActor();
  if (actor) redirect(firstScreenOf(actor));
  const { exists } = await read((api) => api.account.academyExists({}));
  redirect(exists ? "/sign-in" : "/first");
}
