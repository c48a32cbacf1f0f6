import type { Metadata } from "next";
import Link from "next/link";
import { Contacts } from "@/components/season/contacts";
import { Season } from "@/components/season/season";
import { LinkButton } from "@/components/ui/link-button";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Athlete" };

/** An athlete's season, for staff. */
export default async function AthletePage({ params }: { params: Promise<{ athleteId: string }> }) {
  const { athleteId } = await params;
  const season = await read((api) => api.athletes.season({ athleteId }));
  const contacts = await read((api) => api.athletes.guardians({ athleteId }));
  const { name, ageYears, throws, siteName, coachName, hasLeft } = season.athlete;
  return (
    <Season
      season={season}
      side="staff"
      place={
        <>
          <Link href="/athletes">Athletes</Link>, {name}, {ageYears}, {throws}-handed, {siteName},{" "}
          {coachName ? `with ${coachName}` : "without a coach"}
          {hasLeft ? ", has left the academy" : ""}
        </>
      }
      actions={
        <>
          {hasLeft ? null : <LinkButton href={`/calendar/find?athlete=${athleteId}`}>Find a time</LinkButton>}
          <LinkButton href={`/athletes/${athleteId}/throws`}>Log throws</LinkButton>
          <LinkButton href={`/athletes/${athleteId}/report`}>Season report</LinkButton>
        </>
      }
      aside={<Contacts contacts={contacts} hasConsent={season.hasConsent} />}
    />
  );
}
