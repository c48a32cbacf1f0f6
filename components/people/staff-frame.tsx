import type { ReactNode } from "react";
import { StaffShell } from "@/components/shell/staff-shell";
import type { Theme } from "@/components/shell/theme";
import { Cautions } from "./cautions";
import { firstFamilyScreenOf } from "./first-screen";
import type { Me } from "./me";
import { OwnMenu } from "./own-menu";

const PLACES = [
  { href: "/today", label: "Today" },
  { href: "/reviews", label: "Reviews" },
  { href: "/athletes", label: "Athletes" },
  { href: "/calendar", label: "Calendar" },
  { href: "/ledger", label: "Ledger", isForAdmins: true },
  { href: "/academy", label: "Academy" },
];

/** Around every screen of coaches and admins: where they can go, who they are, what is always cautioned. */
export function StaffFrame({ me, theme, children }: { me: Me; theme: Theme; children: ReactNode }) {
  const isAdmin = me.roles.includes("admin");
  const nav = PLACES.filter((place) => isAdmin || !place.isForAdmins).map(({ href, label }) => ({
    href,
    label,
  }));
  const ways =
    me.athletes.length > 0 ? [{ label: "To the family screens", href: firstFamilyScreenOf(me) }] : [];
  return (
    <StaffShell
      nav={nav}
      homeHref="/today"
      theme={theme}
      account={<OwnMenu name={me.name} role={roleWords(me)} ways={ways} />}
      footer={<Cautions academyName={me.academyName} isDemo={me.isDemo} />}
    >
      {children}
    </StaffShell>
  );
}

function roleWords(me: Me): string {
  const words = { admin: "admin", coach: "coach" } as const;
  const text = me.roles.map((role) => words[role]).join(" and ");
  return text.charAt(0).toUpperCase() + text.slice(1);
}
