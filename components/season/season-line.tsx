"use client";

import { useRouter } from "next/navigation";
import { useMemo, useState } from "react";
import { TimeLine } from "@/components/charts/time-line";
import { TimeLineTables } from "@/components/charts/time-line-tables";
import { isWhole, moved, since, zoomed } from "@/components/charts/time-window";
import { Button } from "@/components/ui/button";
import { SelectField } from "@/components/ui/select-field";
import { PHASE_WORDS, type Phase } from "@/server/domain/mechanics/delivery";
import styles from "./season.module.css";
import { type SeasonAnswer, seasonLinks } from "./season-answer";
import { correctedPhases, rowsOfPhase, seasonDrawing } from "./season-items";

/** Stands for every phase in the list of choices. */
const ALL = "all";

/** The season on one axis: which span of it, which phase, and the same in tables. */
export function SeasonLine({ season, side }: { season: SeasonAnswer; side: "staff" | "family" }) {
  const router = useRouter();
  const drawing = useMemo(
    () => seasonDrawing(season, seasonLinks(side, season.athlete.athleteId)),
    [season, side],
  );
  const { axis: whole, items } = drawing;
  const [axis, setAxis] = useState(() => since(whole, season.sinceDay));
  const [phase, setPhase] = useState<Phase | null>(null);
  const rows = useMemo(() => rowsOfPhase(drawing.rows, phase), [drawing, phase]);
  const phases = correctedPhases(season);
  const showsAll = isWhole(axis, whole);
  const middle = [season.today, axis.endDay].sort()[0] ?? axis.endDay;
  return (
    <>
      <div className={styles.choices} data-print="no">
        <div className={styles.buttons}>
          <Button isSmall onPress={() => setAxis(since(whole, `${season.today.slice(0, 4)}-01-01`))}>
            This year
          </Button>
          <Button isSmall onPress={() => setAxis(since(whole, season.sinceDay))}>
            12 months
          </Button>
          <Button isSmall onPress={() => setAxis(whole)}>
            Everything
          </Button>
        </div>
        <div className={styles.buttons}>
          <Button isSmall onPress={() => setAxis(zoomed(axis, whole, 0.5, middle))}>
            Fewer days
          </Button>
          <Button isSmall isDisabled={showsAll} onPress={() => setAxis(zoomed(axis, whole, 2, middle))}>
            More days
          </Button>
          <Button isSmall isDisabled={showsAll} onPress={() => setAxis(moved(axis, whole, -1))}>
            Earlier
          </Button>
          <Button isSmall isDisabled={showsAll} onPress={() => setAxis(moved(axis, whole, 1))}>
            Later
          </Button>
        </div>
        {phases.length > 1 ? (
          <SelectField
            label="Corrections of"
            options={[
              { value: ALL, label: "Every phase" },
              ...phases.map((value) => ({ value, label: PHASE_WORDS[value] })),
            ]}
            value={phase ?? ALL}
            onChange={(value) => setPhase(phases.find((each) => each === value) ?? null)}
          />
        ) : null}
      </div>
      <TimeLine
        label={`${season.athlete.name}, season`}
        {...{ rows, items, axis, whole, today: season.today }}
        onAxis={setAxis}
        onOpen={(href) => router.push(href)}
      />
      <TimeLineTables rows={rows} items={items} axis={axis} />
    </>
  );
}
