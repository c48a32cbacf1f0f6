"use client";
import { useEffect, useState } from "react";
import { Button } from "@/components/ui/button";
import { RadioChoice } from "@/components/ui/radio-choice";
import { FILMED_SPEED_WORDS, FILMED_SPEEDS, type FilmedSpeed } from "@/server/domain/clips/capture-rate";
import { keepSpeed, keptSpeed } from "./filmed-speed";
import styles from "./send-clips.module.css";

/** What a {@link SpeedChoice} takes. */
export interface SpeedChoiceProps {
  value: FilmedSpeed | null;
  error: string | undefined;
  onChange: (speed: FilmedSpeed) => void;
}

const OPTIONS = FILMED_SPEEDS.map((speed) => ({ value: speed, label: FILMED_SPEED_WORDS[speed] }));
const store = () => window.localStorage;

/** How fast the clips were recorded: asked once on a device, from then on a line that can be changed. */
export function SpeedChoice({ value, error, onChange }: SpeedChoiceProps) {
  const [isOpen, setOpen] = useState(true);
  useEffect(() => {
    const kept = keptSpeed(store);
    if (kept === null) return;
    onChange(kept);
    setOpen(false);
  }, [onChange]);

  if (!isOpen && value) {
    return (
      <p className={styles.speed}>
        {value === "unknown" ? (
          "How fast this device films is not known."
        ) : (
          <>
            Filmed at: <b>{FILMED_SPEED_WORDS[value].toLowerCase()}</b>, as on this device before.
          </>
        )}{" "}
        <Button variant="link" isSmall onPress={() => setOpen(true)}>
          {value === "unknown" ? "Say it" : "Change"}
        </Button>
      </p>
    );
  }
  return (
    <RadioChoice
      label="Filmed at"
      hint="As the phone's camera calls it, in frames a second. Slow motion is saved stretched, and only this tells true times. Asked once on this device."
      name="filmedSpeed"
      layout="column"
      error={error}
      options={OPTIONS}
      value={value}
      onChange={(chosen) => {
        const speed = FILMED_SPEEDS.find((each) => each === chosen);
        if (!speed) return;
        keepSpeed(store, speed);
        onChange(speed);
      }}
      isRequired
    />
  );
}
