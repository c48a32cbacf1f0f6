import type { Metadata } from "next";
import Link from "next/link";
import { ImportThrows } from "@/components/throwing/import-throws";
import { Overrides } from "@/components/throwing/overrides";
import { ThrowingPage } from "@/components/throwing/throwing-page";
import { Section } from "@/components/ui/section";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Throws" };

/** An athlete's throw log, for staff. */
export default async function StaffThrowsPage({ params }: { params: Promise<{ athleteId: string }> }) {
  const { athleteId } = await params;
  const view = await read((api) => api.throwing.view({ athleteId }));
  const overrides = await read((api) => api.ruleBooks.overrides({ athleteId }));
  const place = <Link href={`/athletes/${athleteId}`}>{view.athlete.name}</Link>;
  return (
    <>
      <ThrowingPage
        view={view}
        place={place}
        overrides={<Overrides athlete={view.athlete} today={view.today} answer={overrides} />}
      />
      <Section title="Past throwing">
        <ImportThrows athleteId={athleteId} />
      </Section>
    </>
  );
}
