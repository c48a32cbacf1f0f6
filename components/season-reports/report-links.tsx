"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { EmptyState } from "@/components/ui/empty-state";
import { Notice } from "@/components/ui/notice";
import { Section } from "@/components/ui/section";
import { ACTS_COLUMN, type Column, Table } from "@/components/ui/table";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { type SeasonSpan, spanInWords } from "@/server/domain/season-reports/season-span";
import { momentInWords } from "@/server/domain/time/words";
import { MadeLink } from "./made-link";
import { MakeLink, type NewLink } from "./make-link";
import type { ReportLink, ReportView } from "./report-answer";
import styles from "./report-tools.module.css";

/** What {@link ReportLinks} takes. */
export interface ReportLinksProps extends Pick<ReportView, "athlete" | "links" | "mayShare" | "mayRevoke"> {
  span: SeasonSpan;
}

/** Who can read the report without signing in: the links, how each stands, and the way to end it at once. */
export function ReportLinks({ athlete, links, span, mayShare, mayRevoke }: ReportLinksProps) {
  const [isMaking, setMaking] = useState(false);
  const [made, setMade] = useState<NewLink | null>(null);
  const end = useCommand((api, input: { linkId: string }, once) =>
    api.seasonReports.revokeLink.mutate(input, once),
  );
  const isEnded = links.some(({ id, state }) => id === made?.linkId && state !== "open");
  const columns: Column<ReportLink>[] = [
    { key: "span", heading: "Season", isRowHeading: true, cell: (link) => spanInWords(link) },
    { key: "by", heading: "Made by", cell: (link) => `${link.byName}, ${moment(link.madeAtMs)}` },
    { key: "state", heading: "Stands", cell: (link) => stateInWords(link, moment) },
    {
      ...ACTS_COLUMN,
      cell: (link) =>
        mayRevoke && link.state === "open" ? (
          <Button isSmall isPending={end.pending} onPress={() => void end.run({ linkId: link.id })}>
            End it
          </Button>
        ) : null,
    },
  ];
  function moment(atMs: number) {
    return momentInWords(atMs, athlete.zone, { withYear: true });
  }
  return (
    <div data-print="no" className={styles.tools}>
      <Section
        title="Who can read it without signing in?"
        aside={mayShare ? <Button onPress={() => setMaking(true)}>Make a link</Button> : null}
      >
        <p className={styles.quiet}>{whoMakesLinks(mayShare, mayRevoke)}</p>
        <CommandProblem problem={end.problem} />
        {made && !isEnded ? <MadeLink link={made} until={moment(made.expiresAtMs)} /> : null}
        {links.length > 0 ? (
          <Table
            caption="Links to reports"
            isCaptionHidden
            columns={columns}
            rows={links}
            rowKey={({ id }) => id}
          />
        ) : (
          <EmptyState title="Nobody: no link was made">
            Only those who sign in and may see {athlete.givenName} can read it.
          </EmptyState>
        )}
      </Section>
      {isMaking ? (
        <MakeLink
          athlete={athlete}
          span={span}
          onMade={(link) => {
            setMade(link);
            setMaking(false);
          }}
          onClose={() => setMaking(false)}
        />
      ) : null}
      {made && isEnded ? (
        <Notice kind="held" title="The link is ended.">
          Whoever opens it reads that it does not work any more.
        </Notice>
      ) : null}
    </div>
  );
}

function whoMakesLinks(mayShare: boolean, mayRevoke: boolean): string {
  const what =
    "A link shows this report to whoever has it: a given name and an initial, no day of birth, no film and no picture.";
  if (mayShare) return `${what} It ends by itself, and you or the academy can end it at once.`;
  const who = "A guardian makes one, an athlete of 18 for themselves";
  return mayRevoke
    ? `${what} ${who}: nothing on record lets the academy show it to others. You can end one at once.`
    : `${what} ${who}.`;
}

function stateInWords({ state, expiresAtMs, revokedAtMs }: ReportLink, moment: (atMs: number) => string) {
  switch (state) {
    case "open":
      return `Open until ${moment(expiresAtMs)}`;
    case "expired":
      return `Expired ${moment(expiresAtMs)}`;
    case "revoked":
      return `Ended ${moment(revokedAtMs ?? expiresAtMs)}`;
    case "stopped":
      return "Stopped: whoever made it no longer decides";
  }
}
