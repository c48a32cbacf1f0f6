"use client";
import { EmptyState } from "@/components/ui/empty-state";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { AcademyPage } from "./academy-page";
import { AcademyPlace } from "./academy-place";
import { CoachPart } from "./coach-part";
import type { HoursScreenProps } from "./coach-week";

/** Who works where and when, and who is away. */
export function HoursScreen({ coaches, sites, today, isAdmin }: HoursScreenProps) {
  return (
    <AcademyPage>
      <PageHeading
        question="When does each coach work?"
        place={<AcademyPlace />}
        detail="Sessions can be booked within these hours, as far as the site is open. What is booked already stays booked."
      />
      {coaches.length === 0 ? (
        <EmptyState
          title="No coach yet"
          action={<LinkButton href="/academy/people">To the people</LinkButton>}
        >
          Add a coach, or make an admin a coach, then say when they work.
        </EmptyState>
      ) : null}
      {coaches.map((coach) => (
        <CoachPart key={coach.personId} coach={coach} sites={sites} today={today} isAdmin={isAdmin} />
      ))}
    </AcademyPage>
  );
}
