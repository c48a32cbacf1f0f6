import { Section } from "@/components/ui/section";
import type { Answers } from "@/components/wire/answers";
import type { BookDialogProps } from "./book-dialog";
import { FoundTimes } from "./found-times";
import { SearchForm } from "./search-form";
import styles from "./sessions.module.css";
import { type TimeSearch, timeSearchQuery } from "./time-search";

/** What a {@link Finder} takes. */
export interface FinderProps {
  search: TimeSearch;
  planning: Answers["sessions"]["planning"];
  found: Answers["sessions"]["findTimes"];
  moved: BookDialogProps["moved"];
  ownPersonId: string;
  /** The page's own address without its query. */
  href: string;
  sessionHref: string;
  /** `open` where the search is at hand, `closed` behind a line where the times come first. */
  form: "open" | "closed";
}

/** What is looked for, and the times that fit. */
export function Finder(props: FinderProps) {
  const { search, planning, found, moved, ownPersonId, href, sessionHref, form } = props;
  const fields = (
    <SearchForm
      key={timeSearchQuery(search)}
      search={search}
      href={href}
      coaches={planning.coaches}
      sites={planning.sites}
    />
  );
  const times = (
    <FoundTimes
      found={found}
      search={search}
      planning={planning}
      moved={moved}
      ownPersonId={ownPersonId}
      href={href}
      sessionHref={sessionHref}
    />
  );
  if (form === "open") {
    return (
      <div className={styles.finder}>
        <Section title="What is looked for">{fields}</Section>
        <div>{times}</div>
      </div>
    );
  }
  return (
    <>
      {times}
      <details className={styles.search}>
        <summary>Look for something else</summary>
        {fields}
      </details>
    </>
  );
}
