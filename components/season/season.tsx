import Link from "next/link";
import type { ReactNode } from "react";
import { axisOver } from "@/components/charts/time-axis";
import { ArmToday } from "@/components/throwing/arm-today";
import { PainBanner } from "@/components/throwing/pain-banner";
import { YearOfThrows } from "@/components/throwing/year-of-throws";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import { mondayOf } from "@/server/domain/throwing/throws-by-week";
import { Changes } from "./changes";
import { Judged } from "./judged";
import { OpenCorrections } from "./open-corrections";
import { RoundList } from "./round-list";
import styles from "./season.module.css";
import { type SeasonAnswer, seasonLinks } from "./season-answer";
import { SeasonKey } from "./season-key";
import { SeasonLine } from "./season-line";

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

/** Is it better? Everything on one axis, what changed by more than its error, every judgement on its day. */
export function Season({ season, side, place, actions, aside }: SeasonProps) {
  const { athlete, arm, pain, today, corrections, judged, rounds, weeks } = season;
  const links = seasonLinks(side, athlete.athleteId);
  const axis = axisOver([season.sinceDay, today]) ?? { startDay: season.sinceDay, endDay: today };
  const open = corrections.filter(({ state }) => state === "given" || state === "showing");
  const lately = rounds.filter(({ receivedOn }) => receivedOn >= season.sinceDay);
  return (
    <>
      <PageHeading
        place={place ?? athlete.name}
        question="Is it better?"
        detail="Everything as it was recorded, and what it carries: a change is told only where it is more than its error."
        actions={actions}
      />
      <PainBanner athlete={athlete} pain={pain} today={today} />
      <Section title="The season" aside={<SeasonKey />}>
        <SeasonLine season={season} side={side} />
      </Section>
      <Section title="What changed since it was corrected">
        <Changes changes={season.changes} links={links} />
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
        <YearOfThrows weeks={weeks.filter(({ weekOf }) => weekOf >= mondayOf(season.sinceDay))} />
      </Section>
      <Section title="Rounds" count={lately.length} id="rounds">
        <RoundList rounds={lately} links={links} />
      </Section>
    </>
  );
}
