"use client";
import { useRouter } from "next/navigation";
import { useState } from "react";
import { Checkbox } from "@/components/ui/checkbox";
import { NumberField } from "@/components/ui/number-field";
import { RadioChoice } from "@/components/ui/radio-choice";
import { TextField } from "@/components/ui/text-field";
import { FormDialog } from "@/components/wire/form-dialog";
import { textOf } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";
import type { DrawInput, PoolView } from "@/server/api/agreement/shapes";
import { BLIND_FRAMES } from "@/server/domain/mechanics/blind-draw";
import { BLIND_WAYS, type BlindWay } from "@/server/domain/mechanics/blind-pool";
import { CAMERA_VIEW_WORDS, CAMERA_VIEWS, type CameraView } from "@/server/domain/mechanics/delivery";
import styles from "./agreement.module.css";
import { choicesOf, thereInWords, viewsIn, WAY_WORDS } from "./agreement-words";

/** As many as a coach rates in ten minutes or so. Common practice, no source. */
const USUAL_FRAMES = 12;

/** Asks what a new blind set is to be drawn of, and says how many frames there are. */
export function DrawDialog({ pool, onClose }: { pool: PoolView; onClose: () => void }) {
  const router = useRouter();
  const [way, setWay] = useState<BlindWay>("judge");
  const [view, setView] = useState<CameraView>(
    CAMERA_VIEWS.find((each) => viewsIn(pool, "judge").has(each)) ?? "open_side",
  );
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [frames, setFrames] = useState<number | null>(USUAL_FRAMES);
  const [errors, setErrors] = useState<Record<string, string> | null>(null);
  const draw = useCommand((api, input: DrawInput, once) => api.agreement.draw.mutate(input, once));
  const choices = choicesOf(pool, way, view);
  const picked = choices.filter(({ id }) => chosen.has(id));
  const there = picked.reduce((sum, each) => sum + each.frames, 0);

  async function submit(data: FormData) {
    const missing = {
      ...(picked.length === 0 ? { checkpoints: "Choose a checkpoint at least." } : {}),
      ...(frames === null ? { frames: "Say how many frames." } : {}),
    };
    setErrors(Object.keys(missing).length > 0 ? missing : null);
    if (picked.length === 0 || frames === null) return;
    const checkpointIds = picked.map(({ id }) => id);
    const drawn = await draw.run({ name: textOf(data, "name"), way, view, checkpointIds, frames });
    if (!drawn) return;
    onClose();
    router.push(`/academy/agreement/${drawn.setId}`);
  }

  function toggle(id: string, isChosen: boolean) {
    setChosen((before) => new Set([...before].filter((each) => each !== id).concat(isChosen ? [id] : [])));
  }

  return (
    <FormDialog
      title="Draw a set"
      label="Draw a set"
      submitText="Draw it"
      isWide
      command={draw}
      errors={errors}
      onSubmit={submit}
      onClose={onClose}
    >
      <TextField label="What is it called?" name="name" maxLength={60} isRequired autoFocus />
      <RadioChoice
        label="What do coaches do?"
        options={BLIND_WAYS.map((each) => ({ value: each, label: WAY_WORDS[each] }))}
        value={way}
        onChange={(each) => setWay(each as BlindWay)}
        hint={
          way === "judge"
            ? "Frames on which the checkpoint’s moment is marked."
            : "Frames on which the checkpoint’s measure was taken before."
        }
      />
      <RadioChoice
        label="Filmed from"
        options={CAMERA_VIEWS.map((each) => ({
          ...{ value: each, label: CAMERA_VIEW_WORDS[each] },
          isDisabled: !viewsIn(pool, way).has(each),
        }))}
        value={view}
        onChange={(each) => setView(each as CameraView)}
      />
      <fieldset className={styles.checkpoints} data-field="checkpoints">
        <legend className={styles.legend}>Of which checkpoints?</legend>
        {choices.length === 0 ? (
          <p className={styles.quiet}>Nothing on a film that is kept can be drawn from this view.</p>
        ) : null}
        {choices.map(({ id, name, frames: count }) => (
          <Checkbox
            key={id}
            label={`${name}, ${count === 1 ? "1 frame" : `${count} frames`}`}
            isSelected={chosen.has(id)}
            onChange={(isChosen) => toggle(id, isChosen)}
          />
        ))}
      </fieldset>
      <NumberField
        label="How many frames?"
        name="frames"
        min={BLIND_FRAMES.min}
        max={BLIND_FRAMES.max}
        value={frames}
        onChange={setFrames}
        hint={`${BLIND_FRAMES.min} to ${BLIND_FRAMES.max}. They are drawn by chance, spread over athletes and coaches.`}
        isRequired
      />
      <p className={styles.there} role="status">
        {thereInWords(there, frames)}
      </p>
    </FormDialog>
  );
}
