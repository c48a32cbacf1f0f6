import type { Metadata } from "next";
import { defaultSearch, searchToMove } from "@/components/sessions/default-search";
import { Finder } from "@/components/sessions/finder";
import { FinderHeading } from "@/components/sessions/finder-heading";
import {
  type AddressParams,
  askedTimes,
  athletesIn,
  readTimeSearch,
} from "@/components/sessions/time-search";
import { WhomForm } from "@/components/sessions/whom-form";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Find a time" };

/** Which times fit coach, lane, athletes and arms: found, taken, or found again for a session that moves. */
export default async function FindPage({ searchParams }: { searchParams: Promise<AddressParams> }) {
  const params = await searchParams;
  const moveId = typeof params.move === "string" ? params.move : null;
  const moved = moveId ? await read((api) => api.sessions.forStaff({ sessionId: moveId })) : null;
  const athleteIds = moved ? moved.athletes.map((one) => one.athleteId) : athletesIn(params);
  if (athleteIds.length === 0) {
    const { athletes } = await read((api) => api.calendar.whom({}));
    return (
      <>
        <FinderHeading />
        <WhomForm everybody={athletes} chosenIds={[]} />
      </>
    );
  }
  const roundId = typeof params.round === "string" ? params.round : null;
  const planning = await read((api) => api.sessions.planning({ athleteIds, roundId }));
  const plain = defaultSearch(planning, roundId);
  const defaults = moved
    ? searchToMove(plain, { head: moved.head, plannedPitches: moved.athletes[0]?.plannedPitches ?? 0 })
    : plain;
  const search = readTimeSearch(params, defaults);
  const found = await read((api) => api.sessions.findTimes(askedTimes(search)));
  const { personId } = await read((api) => api.account.me({}));
  return (
    <>
      <FinderHeading
        names={planning.athletes.map((one) => one.name)}
        followUp={planning.followUp}
        search={search}
      />
      {moved ? null : (
        <WhomForm everybody={(await read((api) => api.calendar.whom({}))).athletes} chosenIds={athleteIds} />
      )}
      <Finder
        {...{ search, planning, found }}
        moved={moved ? { version: moved.head.version, secondAdult: moved.head.secondAdult } : null}
        ownPersonId={personId}
        href="/calendar/find"
        sessionHref="/calendar"
        form="open"
      />
    </>
  );
}
