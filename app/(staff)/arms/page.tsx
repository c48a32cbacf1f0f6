import type { Metadata } from "next";
import { type BoardSearch, boardPlace, EVERY_COACH } from "@/components/arms/arms-address";
import { ArmsBoard } from "@/components/arms/arms-board";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Arms" };

/** Athletes by days: whose arm is limited, and until when. A coach begins with their own athletes. */
export default async function ArmsPage({ searchParams }: { searchParams: Promise<BoardSearch> }) {
  const asked = boardPlace(await searchParams);
  const me = await read((api) => api.account.me({}));
  const own = me.roles.includes("coach") ? me.personId : EVERY_COACH;
  const place = { ...asked, coach: asked.coach ?? own };
  const { team, site, order, page } = place;
  const coach = place.coach === EVERY_COACH ? null : place.coach;
  const board = await read((api) => api.arms.board({ coach, team, site, order, page }));
  return <ArmsBoard board={board} place={place} myPersonId={me.personId} />;
}
