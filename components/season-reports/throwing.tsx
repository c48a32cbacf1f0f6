import { Disclosure } from "@/components/ui/disclosure";
import { Table } from "@/components/ui/table";
import { throwsOf } from "@/server/domain/season-reports/season-throwing";
import { dayInWords, monthInWords } from "@/server/domain/time/words";
import report from "./report.module.css";
import type { Report } from "./report-answer";
import styles from "./throwing.module.css";
import { WeekStrip } from "./week-strip";

/** What was thrown: sentences, the weeks as bars, the months as figures; each week's on the screen. */
export function Throwing({ throwing }: Pick<Report, "throwing">) {
  const { words, weeks, months } = throwing;
  const thrown = weeks.filter((week) => throwsOf(week) > 0);
  return (
    <>
      <ul className={report.plain}>
        {words.map((each) => (
          <li key={each}>{each}</li>
        ))}
      </ul>
      {thrown.length > 0 ? (
        <>
          <WeekStrip weeks={weeks} label={`Throws a week. ${words.join(" ")}`} />
          <MonthTable months={months} />
          <div data-print="no">
            <Disclosure summary="Each week in figures">
              <Table
                caption="Throws a week; weeks without throws are left out"
                isCaptionHidden
                onPhone="scroll"
                rows={thrown}
                rowKey={({ weekOf }) => weekOf}
                columns={[
                  {
                    key: "week",
                    heading: "Week of",
                    isRowHeading: true,
                    cell: ({ weekOf }) => dayInWords(weekOf, { withYear: true }),
                  },
                  { key: "all", heading: "Throws", align: "number", cell: throwsOf },
                  {
                    key: "games",
                    heading: "In games",
                    align: "number",
                    cell: ({ counts }) => counts.games,
                  },
                ]}
              />
            </Disclosure>
          </div>
        </>
      ) : null}
    </>
  );
}

/** Months as columns, so that a year is three lines. */
function MonthTable({ months }: Pick<Report["throwing"], "months">) {
  const lines = [
    { name: "Throws", figure: (month: (typeof months)[number]) => month.throws },
    { name: "Outings", figure: (month: (typeof months)[number]) => month.outings },
    { name: "Pitches in them", figure: (month: (typeof months)[number]) => month.outingPitches },
  ];
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: on a phone it scrolls, and the arrow keys need it in hand
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for what can be filled in
    <div className={styles.scroll} tabIndex={0} role="group" aria-label="Throws by month">
      <table className={styles.monthTable}>
        <thead>
          <tr>
            <td />
            {months.map(({ month }) => (
              <th key={month} scope="col" abbr={monthInWords(month)}>
                {monthInWords(month).slice(0, 3)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map(({ name, figure }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {months.map((month) => (
                <td key={month.month}>{figure(month)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
