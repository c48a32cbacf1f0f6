import type { Metadata } from "next";
import { Queue } from "@/components/queue/queue";
import { QUEUE_PARTS } from "@/components/queue/round-acts";
import { LinkButton } from "@/components/ui/link-button";
import { pageNowMs, read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Reviews" };

/** The queue of what is owed. A coach sees their own first, an admin everything. */
export default async function ReviewsPage({
  searchParams,
}: {
  searchParams: Promise<{ show?: string | string[] }>;
}) {
  const { show } = await searchParams;
  const me = await read((api) => api.account.me({}));
  const queue = await read((api) => api.rounds.queue({}));
  const isCoach = me.roles.includes("coach");
  const part = QUEUE_PARTS.find((each) => each === show) ?? (isCoach ? "mine" : "all");
  return (
    <>
      <Queue {...queue} viewer={{ personId: me.personId, isCoach }} part={part} nowMs={await pageNowMs()} />
      <LinkButton variant="link" href="/reviews/measure-again">
        How sure are our measures?
      </LinkButton>
    </>
  );
}
