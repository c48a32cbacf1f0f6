"use client";
import { Checkbox } from "@/components/ui/checkbox";
import { CAMERA_VIEW_WORDS, CAMERA_VIEWS, type CameraView } from "@/server/domain/mechanics/delivery";
import styles from "./views-field.module.css";

const nameOf = (view: CameraView) => `views.${view}`;

/** The camera views from which a checkpoint can be judged. */
export function ViewsField({ chosen }: { chosen: readonly CameraView[] }) {
  return (
    <fieldset className={styles.views} data-field="views">
      <legend className={styles.legend}>Can be judged from</legend>
      {CAMERA_VIEWS.map((view) => (
        <Checkbox
          key={view}
          label={CAMERA_VIEW_WORDS[view]}
          name={nameOf(view)}
          defaultSelected={chosen.includes(view)}
        />
      ))}
    </fieldset>
  );
}

/** The views ticked in a form. */
export function viewsOf(data: FormData): CameraView[] {
  return CAMERA_VIEWS.filter((view) => data.get(nameOf(view)) !== null);
}
