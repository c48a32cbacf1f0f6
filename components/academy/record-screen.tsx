import { Notice } from "@/components/ui/notice";
import { PageHeading } from "@/components/ui/page-heading";
import { Pagination } from "@/components/ui/pagination";
import { Table } from "@/components/ui/table";
import { TimeText } from "@/components/ui/time-text";
import type { Answers } from "@/components/wire/answers";
import { momentInWords } from "@/server/domain/time/words";
import styles from "./academy-page.module.css";
import { AcademyPlace } from "./academy-place";
import { actInWords, factsInWords } from "./act-words";

/** What a {@link RecordScreen} takes. */
export interface RecordScreenProps {
  record: Answers["academy"]["record"];
  page: number;
  /** IANA zone in which the times are shown. */
  zone: string;
}

/** Who changed what, latest first, and whether the chain of the record is whole. */
export function RecordScreen({ record, page, zone }: RecordScreenProps) {
  return (
    <>
      <PageHeading
        question="Who changed what?"
        place={<AcademyPlace />}
        detail={`Acts of rights, money and settings. Nothing here can be changed or removed. Times are by the clock of ${zone}.`}
      />
      {record.firstBroken === null ? (
        <Notice
          isStatic
          className={styles.note ?? ""}
          kind="held"
          word="Whole"
          title="Every row fits the one before it."
        >
          Each carries a hash over the row before; all were checked just now.
        </Notice>
      ) : (
        <Notice
          isStatic
          className={styles.note ?? ""}
          kind="refusal"
          word="Broken"
          title={`Row ${record.firstBroken} does not fit the row before it.`}
        >
          The record was changed from outside. Compare with a backup from before that row.
        </Notice>
      )}
      <Table
        caption="The record"
        isCaptionHidden
        rows={record.rows}
        rowKey={(row) => String(row.sequence)}
        empty="Nothing was changed yet."
        columns={[
          { key: "act", heading: "Act", isRowHeading: true, cell: (row) => actInWords(row.action) },
          {
            key: "on",
            heading: "On",
            cell: (row) => row.subjectName ?? <small>{row.subjectId}</small>,
          },
          { key: "who", heading: "By", cell: (row) => row.actorName ?? "the academy itself" },
          {
            key: "at",
            heading: "When",
            isFit: true,
            cell: (row) => (
              <TimeText dateTime={row.atMs}>{momentInWords(row.atMs, zone, { withYear: true })}</TimeText>
            ),
          },
          { key: "facts", heading: "Facts", cell: (row) => factsInWords(row.facts) },
          { key: "row", heading: "Row", align: "number", isFit: true, cell: (row) => row.sequence },
        ]}
      />
      <Pagination
        page={page}
        pageSize={record.pageSize}
        total={record.total}
        noun="rows"
        hrefFor={(to) => `/academy/record?page=${to}`}
      />
    </>
  );
}
