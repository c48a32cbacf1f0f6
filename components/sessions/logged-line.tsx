import { DefinitionList } from "@/components/ui/definition-list";
import type { Answers } from "@/components/wire/answers";
import { speedInWords } from "@/server/domain/calendar/radar-speed";
import { MAX_EFFORT } from "@/server/domain/throwing/load-effort";

type Log = NonNullable<Answers["sessions"]["forStaff"]["athletes"][number]["log"]>;

const OUTCOMES = { worked_on: "worked on", confirmed: "holds, seen in person" } as const;

/** What was written down of one athlete. */
export function LoggedLine({ log }: { log: Log }) {
  if (log.attendance === "no_show") return <p>Did not come. Nothing was charged. {log.note}</p>;
  const work = log.work.map(({ correctionId, checkpointName, outcome }) => (
    <div key={correctionId}>
      {checkpointName}: {OUTCOMES[outcome]}
    </div>
  ));
  return (
    <DefinitionList
      items={[
        { term: "Pitches thrown", detail: log.pitches },
        ...(log.strikes === null ? [] : [{ term: "Strikes", detail: `${log.strikes} of ${log.pitches}` }]),
        ...(log.topSpeed === null || log.speedUnit === null
          ? []
          : [{ term: "Fastest by radar", detail: speedInWords(log.topSpeed, log.speedUnit) }]),
        { term: "Minutes", detail: log.minutes },
        ...(log.effort === null ? [] : [{ term: "Effort", detail: `${log.effort} of ${MAX_EFFORT}` }]),
        ...(work.length > 0 ? [{ term: "Worked on", detail: work }] : []),
        ...(log.note ? [{ term: "Note", detail: log.note }] : []),
      ]}
    />
  );
}
