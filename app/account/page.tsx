import type { Metadata } from "next";
import { OwnFrame } from "@/components/people/own-frame";
import { OwnSignIns } from "@/components/people/own-sign-ins";
import { chosenTheme } from "@/components/shell/chosen-theme";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Where you are signed in" };

export default async function AccountPage() {
  const me = await read((api) => api.account.me({}));
  const signIns = await read((api) => api.account.signIns({}));
  return (
    <OwnFrame me={me} theme={await chosenTheme()}>
      <OwnSignIns me={me} signIns={signIns} zone={Intl.DateTimeFormat().resolvedOptions().timeZone} />
    </OwnFrame>
  );
}
