import Link from "next/link";
import { axisOver } from "@/components/charts/time-axis";
import { Disclosure } from "@/components/ui/disclosure";
import { EmptyState } from "@/components/ui/empty-state";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import { Tabs } from "@/components/ui/tabs";
import type { CheckpointEvidence } from "@/server/api/evidence/checkpoint-shape";
import { EVENT_WORDS, PHASE_WORDS } from "@/server/domain/mechanics/delivery";
import { FramesToSee } from "./frames-to-see";
import { ObservationTable } from "./observation-table";
import type { SeriesView } from "./plot-days";
import { SeriesChart } from "./series-chart";
import { ChartKey, CorrectionLives } from "./series-parts";
import { seriesName } from "./series-words";
import { WhatIsTold } from "./what-is-told";

/** Did it change? One checkpoint of one athlete: what can be told, day by day, the frames, every look. */
export function CheckpointPage({ evidence }: { evidence: CheckpointEvidence }) {
  const { athlete, checkpoint, series, corrections } = evidence;
  return (
    <>
      <PageHeading
        question="Did it change?"
        place={
          <>
            <Link href="/athletes">Athletes</Link>
            {" / "}
            <Link href={`/athletes/${athlete.athleteId}`}>{athlete.name}</Link>
            {" / "}
            {checkpoint.name}
          </>
        }
        detail={
          <>
            {PHASE_WORDS[checkpoint.phase]}, at {EVENT_WORDS[checkpoint.event].toLowerCase()}. Absent:{" "}
            {checkpoint.absentLooksLike} Clear: {checkpoint.clearLooksLike}
          </>
        }
      />
      {series.length === 0 ? (
        <EmptyState title="Nothing was judged or measured here yet">
          Judge this checkpoint on a clip in the review room, or measure it; each look then stands here on the
          day the clip was filmed.
        </EmptyState>
      ) : (
        <Tabs
          label="What was looked at, and from where"
          tabs={series.map((each) => ({
            key: `${each.kind} ${each.view}`,
            label: `${seriesName(each)} (${each.days.length})`,
            content: <OneSeries series={each} evidence={evidence} />,
          }))}
        />
      )}
      {series.length === 0 && corrections.length > 0 ? (
        <Section title="Corrections">
          <CorrectionLives corrections={corrections} />
        </Section>
      ) : null}
    </>
  );
}

interface OneSeriesProps {
  series: SeriesView;
  evidence: CheckpointEvidence;
}

function OneSeries({ series, evidence }: OneSeriesProps) {
  const { corrections, today, manyWords } = evidence;
  const axis = axisOver([
    ...series.days.map(({ day }) => day),
    ...corrections.map((each) => each.givenOn),
    today,
  ]);
  const name = seriesName(series);
  return (
    <>
      <Section title="What can be told">
        <WhatIsTold {...{ series, corrections, manyWords }} />
      </Section>
      {axis === null || series.days.length === 0 ? null : (
        <Section title="Day by day" count={series.days.length}>
          <SeriesChart {...{ series, corrections, axis }} />
          <ChartKey {...{ series, corrections }} />
        </Section>
      )}
      <Section title="Frames to look at">
        <FramesToSee frames={series.frames} />
      </Section>
      <Section title="Every look" count={series.observations.length}>
        <Disclosure summary="Day, value, coach and frame of each">
          <ObservationTable name={name} observations={series.observations} />
        </Disclosure>
      </Section>
    </>
  );
}
