import { Disclosure } from "@/components/ui/disclosure";
import { Table } from "@/components/ui/table";
import { dayInWords } from "@/server/domain/time/words";
import styles from "./load.module.css";
import type { LoadAnswer } from "./load-answer";
import { LoadChart } from "./load-chart";
import { LoadCriticism } from "./load-criticism";
import { LoadEffort } from "./load-effort";

/** An arm's load: twelve months in sentences, the ratios as lines, sessions by effort. It describes and never judges. */
export function Load({ load }: { load: LoadAnswer }) {
  return (
    <div className={styles.load}>
      <ul className={styles.sentences} aria-label="Twelve months">
        {[...load.year, ...load.monthsOff].map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {load.now === null ? null : (
        <>
          <p className={styles.lead}>
            {load.now} A ratio sets the first beside the second: at 1 they are alike. Every logged throw
            counts as one, and a day without an entry as none. This describes what was logged. No ratio here
            is too high or too low, and none says what will happen.
          </p>
          <LoadChart weeks={load.weeks} />
          <LoadDays days={load.days} />
        </>
      )}
      <LoadEffort weeks={load.effort} />
      <LoadCriticism />
    </div>
  );
}

function LoadDays({ days }: Pick<LoadAnswer, "days">) {
  return (
    <Disclosure summary="Day by day, the last 28 days on the log">
      <div className={styles.narrow}>
        <Table
          caption="Throws a day, of whatever kind"
          isCaptionHidden
          columns={[
            {
              key: "day",
              heading: "Day",
              isRowHeading: true,
              isFit: true,
              cell: ({ day }) => dayInWords(day),
            },
            { key: "throws", heading: "Throws", align: "number", isFit: true, cell: ({ throws }) => throws },
          ]}
          rows={days}
          rowKey={({ day }) => day}
          onPhone="scroll"
        />
      </div>
    </Disclosure>
  );
}
