import { IMPORT_COLUMNS } from "@/server/domain/throwing/import-row";

interface Preview {
  fresh: readonly unknown[];
  there: readonly unknown[];
  bad: readonly unknown[];
}

const rows = (count: number) => (count === 1 ? "1 row" : `${count} rows`);

/** The file to fill in, as an address that is downloaded: its columns, and nothing else. */
export function importTemplateHref(): string {
  return `data:text/csv;charset=utf-8,${encodeURIComponent(`${IMPORT_COLUMNS.join(",")}\r\n`)}`;
}

/**
 * How much of a file is new, there already and wrong.
 * @example rowsInWords({ fresh: [1, 2], there: [], bad: [1] }) // "2 rows are new, 1 cannot be read."
 */
export function rowsInWords({ fresh, there, bad }: Preview): string {
  const parts = [
    `${rows(fresh.length)} ${fresh.length === 1 ? "is" : "are"} new`,
    ...(there.length > 0 ? [`${there.length} on the log already`] : []),
    ...(bad.length > 0 ? [`${bad.length} cannot be read`] : []),
  ];
  return `${parts.join(", ")}.`;
}

/** What the button does: adds the new rows, and says that wrong ones are left out. */
export function addWords({ fresh, bad }: Preview): string {
  const add = `Add ${fresh.length === 1 ? "the new row" : `the ${fresh.length} new rows`}`;
  return bad.length > 0 ? `${add}, leave out ${rows(bad.length)}` : add;
}

/** What was done. */
export function importedInWords(counts: { added: number; there: number; leftOut: number }): string {
  const leftOut = counts.leftOut > 0 ? `, ${counts.leftOut} left out` : "";
  return `Added: ${rows(counts.added)}${leftOut}.`;
}
