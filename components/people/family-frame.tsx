import type { ReactNode } from "react";
import { FamilyShell } from "@/components/shell/family-shell";
import type { Theme } from "@/components/shell/theme";
import { RememberFamily } from "@/components/throwing/remember-family";
import { ThrowDeskPart } from "@/components/throwing/throw-desk";
import { Notice } from "@/components/ui/notice";
import { AthleteSwitch } from "./athlete-switch";
import { Cautions } from "./cautions";
import type { Me } from "./me";
import { OwnMenu } from "./own-menu";

/** What a {@link FamilyFrame} takes. */
export interface FamilyFrameProps {
  me: Me;
  /** The athlete in hand: one of `me.athletes`. */
  athlete: Me["athletes"][number];
  theme: Theme;
  children: ReactNode;
}

/** Around every screen of a family: one athlete's places, the way to another athlete, what is always cautioned. */
export function FamilyFrame({ me, athlete, theme, children }: FamilyFrameProps) {
  const home = `/family/${athlete.athleteId}`;
  const nav = [
    { href: home, label: "Home" },
    ...(athlete.hasLeft
      ? []
      : [
          { href: `${home}/send`, label: "Send" },
          { href: `${home}/times`, label: "Times" },
        ]),
    { href: `${home}/throws`, label: "Throws" },
    { href: `${home}/season`, label: "Season" },
  ];
  const ways = [
    { label: "Consent and who can see", href: `${home}/consent` },
    ...(me.roles.length > 0 ? [{ label: "To the staff screens", href: "/today" }] : []),
  ];
  return (
    <FamilyShell
      nav={nav}
      homeHref={home}
      theme={theme}
      search={me.athletes.length > 1 ? <AthleteSwitch athletes={me.athletes} current={athlete} /> : null}
      account={
        <OwnMenu
          personId={me.personId}
          name={me.name}
          role={athlete.isSelf ? "Athlete" : "Guardian"}
          ways={ways}
        />
      }
      footer={<Cautions academyName={me.academyName} isDemo={me.isDemo} />}
    >
      <RememberFamily
        personId={me.personId}
        athletes={me.athletes
          .filter((each) => !each.hasLeft)
          .map(({ athleteId, givenName }) => ({ athleteId, givenName }))}
      />
      <ThrowDeskPart personId={me.personId}>
        {athlete.hasLeft ? (
          <Notice kind="info" title={`${athlete.givenName} has left the academy.`} isStatic>
            The season and past reviews stay to read. Nothing new is sent or booked.
          </Notice>
        ) : null}
        {children}
      </ThrowDeskPart>
    </FamilyShell>
  );
}
