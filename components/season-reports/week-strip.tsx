import { monthLabels } from "@/components/charts/week-rows";
import { throwsOf } from "@/server/domain/season-reports/season-throwing";
import type { WeekOfThrows } from "@/server/domain/throwing/throws-by-week";
import styles from "./throwing.module.css";

/** The bars are drawn on a field of so many units a week and so many in height, which stretches to its place. */
const [WEEK, HEIGHT, GAP] = [10, 100, 1.5];

/**
 * Throws a week as bars that fit paper and a phone alike: full for games, live at-bats and showcases, open for all else.
 * The figures stand beside it in a table.
 */
export function WeekStrip({ weeks, label }: { weeks: readonly WeekOfThrows[]; label: string }) {
  const most = Math.max(1, ...weeks.map(throwsOf));
  const names = monthLabels(weeks);
  return (
    <figure className={styles.strip}>
      <svg
        viewBox={`0 0 ${weeks.length * WEEK} ${HEIGHT}`}
        preserveAspectRatio="none"
        role="img"
        aria-label={label}
      >
        {weeks.map((week, index) => (
          <Bar key={week.weekOf} week={week} left={index * WEEK} scale={HEIGHT / most} />
        ))}
        <path d={`M0 ${HEIGHT}H${weeks.length * WEEK}`} className={styles.ground} />
      </svg>
      <div className={styles.months} aria-hidden="true">
        {weeks.map(({ weekOf }, index) => {
          const name = names.get(weekOf);
          return name ? (
            <span key={weekOf} style={{ insetInlineStart: `${(index / weeks.length) * 100}%` }}>
              {name}
            </span>
          ) : null;
        })}
      </div>
      <figcaption className={styles.caption}>
        Throws a week, {most === 1 ? "the tallest bar 1" : `the tallest bar ${most}`}. Full: games, live
        at-bats, showcases. Open: all else.
      </figcaption>
    </figure>
  );
}

function Bar({ week, left, scale }: { week: WeekOfThrows; left: number; scale: number }) {
  const [all, games] = [throwsOf(week) * scale, week.counts.games * scale];
  if (all === 0) return null;
  const place = { x: left + GAP, width: WEEK - 2 * GAP };
  return (
    <>
      <rect {...place} y={HEIGHT - all} height={all} className={styles.open} />
      {games > 0 ? <rect {...place} y={HEIGHT - games} height={games} className={styles.full} /> : null}
    </>
  );
}
