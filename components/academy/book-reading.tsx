import { Table } from "@/components/ui/table";
import { agesInWords, countedInnings, ruleInSentences } from "@/server/domain/rule-books/rule-in-words";
import type { AgeBand } from "@/server/domain/throwing/age-band";
import type { Rule } from "@/server/domain/throwing/rule";
import { dayInWords } from "@/server/domain/time/words";
import styles from "./books.module.css";

/** One rule of a book to be read: what it says, its table by ages, since when it holds and where it is from. */
export function RuleReading({ rule }: { rule: Rule }) {
  const from = dayInWords(rule.effectiveFrom, { withYear: true });
  const until = rule.effectiveUntil
    ? `, until before ${dayInWords(rule.effectiveUntil, { withYear: true })}`
    : "";
  return (
    <div className={styles.rule}>
      {ruleInSentences(rule).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <RuleTable rule={rule} />
      <p className={styles.quiet}>
        {rule.level === "limit" ? "A limit" : "Advice: it warns and changes no number"}. In force from {from}
        {until}. Source: {rule.source}.
      </p>
    </div>
  );
}

function RuleTable({ rule }: { rule: Rule }) {
  switch (rule.kind) {
    case "pitch_count":
      return <RestTable bands={rule.ageBands} />;
    case "innings":
      return (
        <ByAge
          bands={rule.ageBands}
          columns={[["At most in a day", (band) => countedInnings(band.outsPerDay)]]}
        />
      );
    case "catching":
      return rule.afterCatching.length === 0 ? null : (
        <ByAge
          bands={rule.afterCatching}
          columns={[["From", (band) => `${band.pitchesThatBarCatching} pitches`]]}
        />
      );
    case "total":
      return (
        <ByAge
          bands={rule.ageBands}
          columns={[
            ["At most", ({ most }) => (rule.unit === "pitches" ? `${most} pitches` : countedInnings(most))],
          ]}
        />
      );
    case "months_off":
      return (
        <ByAge
          bands={rule.ageBands}
          columns={[
            ["Of a year, at least", ({ months }) => monthsInWords(months)],
            ["In one stretch", ({ runMonths }) => (runMonths === 0 ? "" : monthsInWords(runMonths))],
          ]}
        />
      );
    default:
      return null;
  }
}

/** The table as leagues print it: a row for each span of ages, a column for each number of days of rest. */
function RestTable({ bands }: { bands: readonly AgeBand[] }) {
  const rests = [...new Set(bands.flatMap((band) => band.restBands.map((rest) => rest.restDays)))];
  return (
    <Table
      caption="Pitches in a day by age, and the days of rest they ask for"
      isCaptionHidden
      rows={bands}
      rowKey={(band) => String(band.ageMin)}
      columns={[
        AGES_COLUMN,
        { key: "most", heading: "At most", align: "number", cell: (band) => band.dailyMaxPitches },
        ...rests
          .toSorted((a, b) => a - b)
          .map((restDays) => ({
            key: String(restDays),
            heading: restInWords(restDays),
            align: "number" as const,
            cell: (band: AgeBand) => spanInBand(band, restDays),
          })),
      ]}
    />
  );
}

const AGES_COLUMN = {
  key: "ages",
  heading: "Ages",
  isRowHeading: true,
  cell: (band: { ageMin: number; ageMax: number }) => agesInWords(band.ageMin, band.ageMax),
};

function spanInBand(band: AgeBand, restDays: number): string {
  const rest = band.restBands.find((each) => each.restDays === restDays);
  return rest ? `${rest.minPitches} to ${rest.maxPitches}` : "";
}

function restInWords(restDays: number): string {
  if (restDays === 0) return "No rest";
  return restDays === 1 ? "1 day of rest" : `${restDays} days`;
}

const monthsInWords = (months: number) => `${months} ${months === 1 ? "month" : "months"}`;

interface ByAgeProps<Band> {
  bands: readonly Band[];
  /** Each heading with what stands under it. */
  columns: readonly (readonly [string, (band: Band) => string])[];
}

function ByAge<Band extends { ageMin: number; ageMax: number }>({ bands, columns }: ByAgeProps<Band>) {
  return (
    <Table
      caption="Figures by age"
      isCaptionHidden
      rows={bands}
      rowKey={(band) => String(band.ageMin)}
      columns={[AGES_COLUMN, ...columns.map(([heading, cell]) => ({ key: heading, heading, cell }))]}
    />
  );
}
