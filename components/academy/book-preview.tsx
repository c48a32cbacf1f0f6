"use client";
import { Disclosure } from "@/components/ui/disclosure";
import { Notice } from "@/components/ui/notice";
import { Section } from "@/components/ui/section";
import { Table } from "@/components/ui/table";
import type { Answers } from "@/components/wire/answers";
import { dayInWords } from "@/server/domain/time/words";

type Preview = Answers["ruleBooks"]["preview"];

/** What a book would have said of the last thirty days, where that differs; nothing until it is asked for. */
export function BookPreview({ preview }: { preview: Preview | undefined }) {
  if (!preview) return null;
  return (
    <Section title="What it would have said" count={preview.daysThatDiffer}>
      <Notice title={previewInWords(preview)}>
        Compared on the morning of each day, from {dayInWords(preview.fromDay)} to {dayInWords(preview.toDay)}
        , with the book each athlete goes by, on what the log holds now. Planned outings, overrides and pain
        are left out of both.
      </Notice>
      {preview.listed.length > 0 ? (
        <Disclosure summary="On which days, for whom">
          <Differences preview={preview} />
        </Disclosure>
      ) : null}
    </Section>
  );
}

/**
 * The counts of a preview in one sentence.
 * @example "Another answer on 3 days for 2 of 12 athletes: 2 stricter, 0 looser, 1 of another kind."
 */
export function previewInWords(preview: Omit<Preview, "listed" | "lines" | "fromDay" | "toDay">): string {
  if (preview.daysThatDiffer === 0)
    return `The same answer on every day, for all ${preview.athletes} athletes.`;
  const days = preview.daysThatDiffer === 1 ? "1 day" : `${preview.daysThatDiffer} days`;
  const of = `${preview.athletesThatDiffer} of ${preview.athletes} athletes`;
  const rest = preview.daysThatDiffer - preview.stricter - preview.looser;
  const others = rest > 0 ? `, ${rest} of another kind` : "";
  return `Another answer on ${days} for ${of}: ${preview.stricter} stricter, ${preview.looser} looser${others}.`;
}

const CHANGE_WORDS = { stricter: "stricter", looser: "looser", other: "of another kind" } as const;

function spanInWords({ fromDay, toDay, days }: Preview["listed"][number]): string {
  return days === 1 ? dayInWords(fromDay) : `${dayInWords(fromDay)} to ${dayInWords(toDay)}`;
}

function Differences({ preview }: { preview: Preview }) {
  const hidden = preview.lines - preview.listed.length;
  return (
    <>
      <Table
        caption="Days with another answer"
        isCaptionHidden
        rows={preview.listed}
        rowKey={(row) => `${row.athleteId} ${row.fromDay}`}
        columns={[
          { key: "who", heading: "Athlete", isRowHeading: true, cell: (row) => row.name },
          { key: "days", heading: "Days", cell: spanInWords },
          { key: "before", heading: "The book in force", cell: (row) => row.before },
          { key: "after", heading: "This book", cell: (row) => row.after },
          { key: "change", heading: "It is", cell: (row) => CHANGE_WORDS[row.change] },
        ]}
      />
      {hidden > 0 ? <p>And {hidden} more lines.</p> : null}
    </>
  );
}
