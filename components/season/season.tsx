import Link from "next/link";
import type { ReactNode } from "react";
import { TimeLine } from "@/components/charts/time-line";
import { ArmToday } from "@/components/throwing/arm-today";
import { PainBanner } from "@/components/throwing/pain-banner";
import { YearOfThrows } from "@/components/throwing/year-of-throws";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import { Judged } from "./judged";
import { OpenCorrections } from "./open-corrections";
import { RoundList } from "./round-list";
import styles from "./season.module.css";
import { type SeasonAnswer, seasonLinks } from "./season-answer";
import { seasonDrawing } from "./season-items";
import { SeasonKey } from "./season-key";

/** What a {@link Season} takes. */
export interface SeasonProps {
  season: SeasonAnswer;
  /** Whose screens the links lead to. */
  side: "staff" | "family";
  place?: ReactNode;
  actions?: ReactNode;
  /** Stands beside the open corrections; staff see whom to call. */
  aside?: ReactNode;
}

/** Is it better? Twelve months on one axis, every judgement on its day; nothing beyond what was recorded. */
export function Season({ season, side, place, actions, aside }: SeasonProps) {
  const { athlete, arm, pain, today, corrections, judged, rounds, weeks } = season;
  const links = seasonLinks(side, athlete.athleteId);
  const { axis, rows, items } = seasonDrawing(season, links);
  const open = corrections.filter(({ state }) => state === "given" || state === "showing");
  return (
    <>
      <PageHeading
        place={place ?? athlete.name}
        question="Is it better?"
        detail="Twelve months as they were recorded: nothing is worked out of them here."
        actions={actions}
      />
      <PainBanner athlete={athlete} pain={pain} today={today} />
      <Section title="The season" aside={<SeasonKey />}>
        <TimeLine
          label={`${athlete.name}, twelve months`}
          rows={rows}
          items={items}
          axis={axis}
          today={today}
        />
      </Section>
      <div className={styles.halves}>
        <Section title="Working on" count={`(${open.length} of ${season.maxOpenCorrections})`}>
          <OpenCorrections corrections={open} links={links} />
        </Section>
        <Section title="Throwing today" aside={<Link href={links.throws}>The throw log</Link>}>
          <ArmToday arm={arm} />
        </Section>
        {aside}
      </div>
      <Section title="Judged on clips and in person" count={judged.length}>
        <Judged judged={judged} workedOn={open.map((each) => each.checkpointId)} axis={axis} />
      </Section>
      <Section title="The year's throwing">
        <YearOfThrows weeks={weeks} />
      </Section>
      <Section title="Rounds" count={rounds.length} id="rounds">
        <RoundList rounds={rounds} links={links} />
      </Section>
    </>
  );
}
