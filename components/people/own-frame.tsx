import type { ReactNode } from "react";
import { PlainShell } from "@/components/shell/plain-shell";
import type { Theme } from "@/components/shell/theme";
import { Cautions } from "./cautions";
import { FamilyFrame } from "./family-frame";
import type { Me } from "./me";
import { StaffFrame } from "./staff-frame";

/** Around a person's own account: the frame of their other screens, or a plain one while they have none. */
export function OwnFrame({ me, theme, children }: { me: Me; theme: Theme; children: ReactNode }) {
  const [athlete] = me.athletes;
  if (me.roles.length > 0) {
    return (
      <StaffFrame me={me} theme={theme}>
        {children}
      </StaffFrame>
    );
  }
  if (athlete) {
    return (
      <FamilyFrame me={me} athlete={athlete} theme={theme}>
        {children}
      </FamilyFrame>
    );
  }
  return (
    <PlainShell
      homeHref="/account"
      theme={theme}
      footer={<Cautions academyName={me.academyName} isDemo={me.isDemo} />}
    >
      {children}
    </PlainShell>
  );
}
