"use client";
import { Menu } from "@/components/ui/menu";
import type { Me } from "./me";

/** The athlete whose screens these are, and the way to the others' for a guardian of several. */
export function AthleteSwitch({
  athletes,
  current,
}: {
  athletes: Me["athletes"];
  current: Me["athletes"][number];
}) {
  return (
    <Menu
      isSmall
      label={current.givenName}
      accessibleLabel={`Athlete: ${current.givenName}. Choose another`}
      entries={athletes.map((athlete) => ({
        key: athlete.athleteId,
        label: athlete.isSelf ? `${athlete.givenName} (yourself)` : athlete.givenName,
        href: `/family/${athlete.athleteId}`,
        isDisabled: athlete.athleteId === current.athleteId,
      }))}
    />
  );
}
