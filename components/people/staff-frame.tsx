import type { ReactNode } from "react";
import { StaffShell } from "@/components/shell/staff-shell";
import type { Theme } from "@/components/shell/theme";
import { ThrowDeskPart } from "@/components/throwing/throw-desk";
import { Cautions } from "./cautions";
import { firstFamilyScreenOf } from "./first-screen";
import { GoTo } from "./go-to";
import type { Me } from "./me";
import { OwnMenu } from "./own-menu";

interface Place {
  href: string;
  label: string;
  isForAdmins?: boolean;
}

const PLACES: readonly Place[] = [
  { href: "/today", label: "Today" },
  { href: "/reviews", label: "Reviews" },
  { href: "/athletes", label: "Athletes" },
  { href: "/arms", label: "Arms" },
  { href: "/calendar", label: "Calendar" },
  { href: "/ledger", label: "Ledger", isForAdmins: true },
  { href: "/academy", label: "Academy" },
];

/** Pages that the search finds beside those of the head. */
const BESIDES: readonly Place[] = [
  { href: "/calendar/find", label: "Find a time" },
  { href: "/account", label: "Where you are signed in" },
  { href: "/academy/agreement", label: "Coach agreement" },
  { href: "/academy/people", label: "People", isForAdmins: true },
  { href: "/academy/sites", label: "Sites and lanes", isForAdmins: true },
  { href: "/academy/hours", label: "Coaches' hours", isForAdmins: true },
  { href: "/academy/checkpoints", label: "Checkpoints", isForAdmins: true },
  { href: "/academy/books", label: "Rule books", isForAdmins: true },
  { href: "/academy/rates", label: "Rates", isForAdmins: true },
  { href: "/academy/notices", label: "Notices", isForAdmins: true },
  { href: "/academy/settings", label: "Settings", isForAdmins: true },
];

/** Around every screen of coaches and admins: where they can go, who they are, what is always cautioned. */
export function StaffFrame({ me, theme, children }: { me: Me; theme: Theme; children: ReactNode }) {
  const isAdmin = me.roles.includes("admin");
  const openTo = (places: readonly Place[]) =>
    places.filter((place) => isAdmin || !place.isForAdmins).map(({ href, label }) => ({ href, label }));
  const nav = openTo(PLACES);
  const ways =
    me.athletes.length > 0 ? [{ label: "To the family screens", href: firstFamilyScreenOf(me) }] : [];
  return (
    <StaffShell
      nav={nav}
      homeHref="/today"
      theme={theme}
      search={<GoTo pages={[...nav, ...openTo(BESIDES)]} />}
      account={<OwnMenu personId={me.personId} name={me.name} role={roleWords(me)} ways={ways} />}
      footer={<Cautions academyName={me.academyName} isDemo={me.isDemo} />}
    >
      <ThrowDeskPart personId={me.personId}>{children}</ThrowDeskPart>
    </StaffShell>
  );
}

function roleWords(me: Me): string {
  const words = { admin: "admin", coach: "coach" } as const;
  const text = me.roles.map((role) => words[role]).join(" and ");
  return text.charAt(0).toUpperCase() + text.slice(1);
}
