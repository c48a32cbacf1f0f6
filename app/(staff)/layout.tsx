import { redirect } from "next/navigation";
import type { ReactNode } from "react";
import { firstScreenOf } from "@/components/people/first-screen";
import { StaffFrame } from "@/components/people/staff-frame";
import { chosenTheme } from "@/components/shell/chosen-theme";
import { read } from "@/server/api/page-caller";

export default async function StaffLayout({ children }: { children: ReactNode }) {
  const me = await read((api) => api.account.me({}));
  if (me.roles.length === 0) redirect(firstScreenOf(me));
  return (
    <StaffFrame me={me} theme={await chosenTheme()}>
      {children}
    </StaffFrame>
  );
}
