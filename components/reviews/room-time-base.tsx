"use client";
import { useMemo, useState } from "react";
import { Button } from "@/components/ui/button";
import { Dialog, DialogActions } from "@/components/ui/dialog";
import { Form } from "@/components/ui/form";
import { NumberField } from "@/components/ui/number-field";
import { RadioChoice } from "@/components/ui/radio-choice";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { ClipView } from "@/server/api/reviews/shapes";
import {
  contactToReleaseMs,
  MAX_CAPTURED_FPS,
  MIN_CAPTURED_FPS,
  rateInWords,
} from "@/server/domain/clips/capture-rate";
import { timeBaseOf } from "@/server/domain/clips/time-base";
import type { DeliveryEvent } from "@/server/domain/mechanics/delivery";
import styles from "./room-time-base.module.css";
import { checkInWords, checkSource, rateChoices, timeBaseInWords } from "./time-base-words";

/** What a {@link RoomTimeBase} takes. */
export interface RoomTimeBaseProps {
  clip: Pick<ClipView, "id" | "state" | "frameTimesMs" | "capturedFps" | "captureSource">;
  marks: Partial<Record<DeliveryEvent, number>>;
  /** Whether it may be set here: by a coach, not by whoever only reads. */
  mayChange: boolean;
}

/** What the times of a clip are worth, and the way for a coach to set how fast it was recorded. */
export function RoomTimeBase({ clip, marks, mayChange }: RoomTimeBaseProps) {
  const { frameTimesMs, capturedFps, captureSource } = clip;
  const [isOpen, setOpen] = useState(false);
  const base = useMemo(() => timeBaseOf({ frameTimesMs, capturedFps }), [frameTimesMs, capturedFps]);
  if (frameTimesMs.length === 0) return null;
  const maySet = mayChange && clip.state === "ready" && base.kind !== "ramped" && frameTimesMs.length > 1;
  return (
    <p className={styles.base}>
      {timeBaseInWords(base, captureSource)}{" "}
      {maySet ? (
        <Button variant="link" isSmall onPress={() => setOpen(true)}>
          {base.kind === "true" ? "Change the rate" : "Set the rate"}
        </Button>
      ) : null}
      <Dialog title="How fast was it recorded?" isOpen={isOpen} onOpenChange={setOpen}>
        <RateForm clip={clip} marks={marks} onClose={() => setOpen(false)} />
      </Dialog>
    </p>
  );
}

const OTHER = "other";
const UNKNOWN = "unknown";

function RateForm({ clip, marks, onClose }: Omit<RoomTimeBaseProps, "mayChange"> & { onClose: () => void }) {
  const { frameTimesMs, capturedFps } = clip;
  const choices = rateChoices(frameTimesMs, marks, capturedFps);
  const [chosen, setChosen] = useState(capturedFps === null ? null : rateInWords(capturedFps));
  const [other, setOther] = useState<number | null>(null);
  const [isChecked, setChecked] = useState(false);
  const set = useCommand((api, input: { clipId: string; capturedFps: number | null }, once) =>
    api.clips.setCapturedRate.mutate(input, once),
  );
  const fps = chosen === OTHER ? other : rateOf(choices, chosen);
  const missing = missingOf(chosen, other);

  async function save() {
    setChecked(true);
    if (Object.keys(missing).length > 0) return;
    if (await set.run({ clipId: clip.id, capturedFps: fps })) onClose();
  }

  return (
    <Form errors={isChecked ? missing : {}} onSubmit={save} aria-label="Recorded rate">
      <p className={styles.source}>{checkSource(marks)}</p>
      <RadioChoice
        label="Frames a second, as recorded"
        name="rate"
        layout="column"
        error={isChecked ? missing.rate : undefined}
        options={[
          ...choices.map((each) => ({
            value: rateInWords(each.capturedFps),
            label: each.label,
            hint: each.hint,
          })),
          { value: OTHER, label: "Another rate" },
          { value: UNKNOWN, label: "Nobody can know", hint: "times are shown in frames only" },
        ]}
        value={chosen}
        onChange={setChosen}
      />
      {chosen === OTHER ? (
        <NumberField
          label="Rate"
          name="other"
          hint={other === null ? "As the phone's camera settings call it." : otherCheck(clip, marks, other)}
          error={isChecked ? missing.other : undefined}
          unit="a second"
          min={MIN_CAPTURED_FPS}
          max={MAX_CAPTURED_FPS}
          step={0.01}
          value={other}
          onChange={setOther}
        />
      ) : null}
      <CommandProblem problem={set.problem} />
      <DialogActions>
        <Button type="submit" variant="primary" isPending={set.pending}>
          Set the rate
        </Button>
        <Button onPress={onClose}>Leave it</Button>
      </DialogActions>
    </Form>
  );
}

function rateOf(choices: ReturnType<typeof rateChoices>, chosen: string | null): number | null {
  return choices.find((each) => rateInWords(each.capturedFps) === chosen)?.capturedFps ?? null;
}

function missingOf(chosen: string | null, other: number | null): Record<string, string> {
  if (chosen === null) return { rate: "Choose a rate, or that nobody can know." };
  if (chosen === OTHER && other === null) return { other: "Say how many frames a second." };
  return {};
}

function otherCheck(clip: RoomTimeBaseProps["clip"], marks: RoomTimeBaseProps["marks"], fps: number) {
  const spots = { contact: marks.front_foot_contact, release: marks.ball_release };
  return checkInWords(contactToReleaseMs(clip.frameTimesMs, spots, fps));
}
