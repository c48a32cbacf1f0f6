"use client";
import type { ReactNode } from "react";
import { Button } from "@/components/ui/button";
import type { AgeBand, RestBand } from "@/server/domain/throwing/age-band";
import styles from "./book-bands.module.css";
import { type DraftPath, itemsWithPaths } from "./book-draft";
import { FigureField, TakeOut, useBookEditing } from "./book-fields";

/** A figure of each band, beside its ages. */
export interface BandFigure {
  key: string;
  label: string;
}

/** What {@link AgeBands} takes. */
export interface AgeBandsProps {
  bands: readonly { ageMin: number; ageMax: number }[];
  path: DraftPath;
  figures: readonly BandFigure[];
}

/** Bands of ages, each with its figures; the next one begins where the last one ended. */
export function AgeBands({ bands, path, figures }: AgeBandsProps) {
  const blank = Object.fromEntries(figures.map(({ key }) => [key, Number.NaN]));
  return (
    <Bands bands={bands} path={path} blank={blank} figures={figures}>
      {() => null}
    </Bands>
  );
}

const MOST_OF_A_DAY = [{ key: "dailyMaxPitches", label: "At most in a day" }];

/** Bands of ages with the most pitches of a day, and the rest that a day's count asks for. */
export function PitchBands({ bands, path }: { bands: readonly AgeBand[]; path: DraftPath }) {
  const blank = { dailyMaxPitches: Number.NaN, restBands: [nextRest([])] };
  return (
    <Bands bands={bands} path={path} blank={blank} figures={MOST_OF_A_DAY}>
      {(band, at) => <RestBands bands={band.restBands} path={[...at, "restBands"]} ages={bandName(band)} />}
    </Bands>
  );
}

interface BandsProps<Band> {
  bands: readonly Band[];
  path: DraftPath;
  figures: readonly BandFigure[];
  /** What a new band holds beside its ages. */
  blank: object;
  /** What stands under a band's figures. */
  children: (band: Band, at: DraftPath) => ReactNode;
}

function Bands<Band extends { ageMin: number; ageMax: number }>(props: BandsProps<Band>) {
  const { bands, path, figures, blank, children } = props;
  const { add } = useBookEditing();
  return (
    <div className={styles.bands}>
      {itemsWithPaths(bands, path).map(({ item, path: at }) => (
        <fieldset key={at.join(".")} className={styles.band}>
          <legend className={styles.legend}>{bandName(item)}</legend>
          <div className={styles.fields}>
            <AgeFields band={item} path={at} />
            {figures.map(({ key, ...figure }) => (
              <FigureField
                key={key}
                {...figure}
                path={[...at, key]}
                value={(item as unknown as Record<string, number>)[key] ?? null}
              />
            ))}
            <TakeOut what={bandName(item)} path={at} />
          </div>
          {children(item, at)}
        </fieldset>
      ))}
      <div>
        <Button isSmall onPress={() => add(path, { ...nextAges(bands), ...blank })}>
          Add ages
        </Button>
      </div>
    </div>
  );
}

function AgeFields({ band, path }: { band: { ageMin: number; ageMax: number }; path: DraftPath }) {
  return (
    <>
      <FigureField label="First age" path={[...path, "ageMin"]} value={band.ageMin} />
      <FigureField label="Last age" path={[...path, "ageMax"]} value={band.ageMax} />
    </>
  );
}

function RestBands({ bands, path, ages }: { bands: readonly RestBand[]; path: DraftPath; ages: string }) {
  const { add } = useBookEditing();
  return (
    <div className={styles.rests}>
      {itemsWithPaths(bands, path).map(({ item, path: at, isLast }) => (
        <div key={at.join(".")} className={styles.fields}>
          <FigureField label="From pitch" path={[...at, "minPitches"]} value={item.minPitches} />
          <FigureField label="To pitch" path={[...at, "maxPitches"]} value={item.maxPitches} />
          <FigureField label="Days of rest" path={[...at, "restDays"]} value={item.restDays} />
          {isLast && bands.length > 1 ? (
            <TakeOut what={`the last rest band, ${ages.toLowerCase()}`} path={at} />
          ) : null}
        </div>
      ))}
      <div>
        <Button
          isSmall
          variant="link"
          aria-label={`Add a rest band, ${ages.toLowerCase()}`}
          onPress={() => add(path, nextRest(bands))}
        >
          Add a rest band
        </Button>
      </div>
    </div>
  );
}

function bandName({ ageMin, ageMax }: { ageMin: number; ageMax: number }): string {
  const [first, last] = [ageMin, ageMax].map((age) => (Number.isNaN(age) ? "…" : String(age)));
  return `Ages ${first} to ${last}`;
}

/** The ages after the last ones: where a band without gap or overlap begins. */
function nextAges(bands: readonly { ageMax: number }[]) {
  const last = bands.at(-1);
  return { ageMin: last ? last.ageMax + 1 : Number.NaN, ageMax: Number.NaN };
}

/** The rest band after the last one. */
function nextRest(bands: readonly RestBand[]): RestBand {
  const last = bands.at(-1);
  return {
    minPitches: last ? last.maxPitches + 1 : 1,
    maxPitches: Number.NaN,
    restDays: last ? last.restDays + 1 : 0,
  };
}
