"use client";
import Link from "next/link";
import { AcademyPage } from "@/components/academy/academy-page";
import { AcademyPlace } from "@/components/academy/academy-place";
import { Button } from "@/components/ui/button";
import { EmptyState } from "@/components/ui/empty-state";
import { Notice } from "@/components/ui/notice";
import { PageHeading } from "@/components/ui/page-heading";
import { Pagination } from "@/components/ui/pagination";
import type { Answers } from "@/components/wire/answers";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { NoticeState } from "@/server/domain/notices/notice";
import { NoticeEntry } from "./notice-entry";
import { STATE_WORDS } from "./notice-words";
import styles from "./outbox.module.css";

/** What an {@link Outbox} takes. */
export interface OutboxProps {
  outbox: Answers["notices"]["list"];
  page: number;
  /** Only this state is shown; null shows all. */
  state: NoticeState | null;
  /** IANA zone in which the times are shown. */
  zone: string;
}

const STATES: readonly NoticeState[] = ["waiting", "sent", "kept", "failed"];

function hrefFor(state: NoticeState | null, page = 1): string {
  const query = new URLSearchParams({
    ...(state ? { state } : {}),
    ...(page > 1 ? { page: String(page) } : {}),
  });
  return `/academy/notices${query.size > 0 ? `?${query}` : ""}`;
}

/** What was sent to whom, what failed, and what is kept because no mail server is set. */
export function Outbox({ outbox, page, state, zone }: OutboxProps) {
  const retry = useCommand((api, input: { noticeIds: string[] }, once) =>
    api.notices.retry.mutate(input, once),
  );
  const again = outbox.rows.filter(
    (row) => row.state === "failed" || (outbox.isMailSet && row.state === "kept"),
  );
  return (
    <AcademyPage>
      <PageHeading
        question="Who was told what?"
        place={<AcademyPlace />}
        detail="Every notice is written in the same step as what it tells of. One to a minor goes to a guardian too."
        actions={
          again.length > 0 ? (
            <Button
              isPending={retry.pending}
              onPress={() => void retry.run({ noticeIds: again.map((row) => row.id) })}
            >
              Send these {again.length} again
            </Button>
          ) : null
        }
      />
      {outbox.isMailSet ? null : (
        <Notice isStatic title="No mail server is set, so notices are kept here.">
          Read them, and hand links on yourself. With SMTP_URL set, they are sent by e-mail.
        </Notice>
      )}
      <CommandProblem problem={retry.problem} />
      <nav aria-label="States" className={styles.states}>
        <StateLink href={hrefFor(null)} isCurrent={state === null} text="All" />
        {STATES.map((each) => (
          <StateLink
            key={each}
            href={hrefFor(each)}
            isCurrent={state === each}
            text={STATE_WORDS[each]}
            count={outbox.counts[each]}
          />
        ))}
      </nav>
      {outbox.rows.length === 0 ? (
        <EmptyState title="Nothing here">
          {state === null
            ? "Invitations, reviews, bookings and the like will stand here as they are told."
            : "No notice stands so at present."}
        </EmptyState>
      ) : (
        <ul className={styles.list}>
          {outbox.rows.map((row) => (
            <NoticeEntry key={row.id} notice={row} zone={zone} />
          ))}
        </ul>
      )}
      <Pagination
        page={page}
        pageSize={outbox.pageSize}
        total={outbox.total}
        noun="notices"
        hrefFor={(to) => hrefFor(state, to)}
      />
    </AcademyPage>
  );
}

interface StateLinkProps {
  href: string;
  isCurrent: boolean;
  text: string;
  count?: number;
}

function StateLink({ href, isCurrent, text, count }: StateLinkProps) {
  return (
    <Link href={href} className={styles.state} aria-current={isCurrent ? "true" : undefined}>
      {text.charAt(0).toUpperCase() + text.slice(1)}
      {count === undefined ? null : <small>{count}</small>}
    </Link>
  );
}
