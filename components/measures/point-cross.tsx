import type { PictureStage } from "@/components/marks/shape-drawn";
import type { Place } from "@/server/domain/reviews/draft";
import styles from "./measures.module.css";

/** Half the arms of a cross, on the screen. */
export const ARM_PX = 9;

/** A cross on a place, with a gap in its middle so that what is pointed at stays in sight; of one size at every zoom. */
export function PointCross({ at, stage }: { at: Place; stage: Pick<PictureStage, "pxPerSource"> }) {
  const arm = ARM_PX / stage.pxPerSource;
  const gap = arm / 4;
  const long = arm - gap;
  const across = `M${at.x - arm} ${at.y}h${long}m${2 * gap} 0h${long}`;
  const arms = `${across}M${at.x} ${at.y - arm}v${long}m0 ${2 * gap}v${long}`;
  return (
    <>
      <path className={styles.crossEdge} d={arms} />
      <path className={styles.cross} d={arms} />
    </>
  );
}
