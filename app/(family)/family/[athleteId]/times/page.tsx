import type { Metadata } from "next";
import { ComingSessions } from "@/components/sessions/coming-sessions";
import { defaultSearch, searchToMove } from "@/components/sessions/default-search";
import { Finder } from "@/components/sessions/finder";
import { FinderHeading } from "@/components/sessions/finder-heading";
import { type AddressParams, askedTimes, readTimeSearch } from "@/components/sessions/time-search";
import { Notice } from "@/components/ui/notice";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Times" };

interface TimesPageProps {
  params: Promise<{ athleteId: string }>;
  searchParams: Promise<AddressParams>;
}

/** When an athlete comes in, and which times fit: the follow-up of a settled round is looked for first. */
export default async function TimesPage({ params, searchParams }: TimesPageProps) {
  const { athleteId } = await params;
  const asked = await searchParams;
  const href = `/family/${athleteId}/times`;
  const sessionHref = `/family/${athleteId}/sessions`;
  const coming = await read((api) => api.sessions.coming({ athleteId }));
  const list = <ComingSessions sessions={coming.sessions} sessionHref={sessionHref} />;
  if (!coming.mayBook) {
    return (
      <>
        <FinderHeading />
        {coming.hasLeft ? null : <Notice isStatic>A guardian books, moves and cancels.</Notice>}
        {list}
      </>
    );
  }
  const planning = await read((api) => api.sessions.planning({ athleteIds: [athleteId], roundId: null }));
  const moveId = typeof asked.move === "string" ? asked.move : null;
  const moved = moveId ? await read((api) => api.sessions.forFamily({ sessionId: moveId, athleteId })) : null;
  const defaults = defaultSearch(planning, typeof asked.round === "string" ? asked.round : null);
  const search = readTimeSearch(asked, moved ? searchToMove(defaults, moved) : defaults);
  const found = await read((api) => api.sessions.findTimes(askedTimes(search)));
  const { personId } = await read((api) => api.account.me({}));
  return (
    <>
      <FinderHeading
        names={planning.athletes.map((one) => one.givenName)}
        followUp={planning.followUp}
        search={search}
      />
      {moved ? null : list}
      <Finder
        {...{ search, planning, found, href, sessionHref }}
        moved={moved ? { version: moved.head.version, secondAdult: moved.head.secondAdult } : null}
        ownPersonId={personId}
        form="closed"
      />
    </>
  );
}
