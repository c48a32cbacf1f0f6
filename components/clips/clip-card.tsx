"use client";

import { Button } from "@/components/ui/button";
import { Checkbox } from "@/components/ui/checkbox";
import { FormRow } from "@/components/ui/form";
import { Notice } from "@/components/ui/notice";
import { NumberField } from "@/components/ui/number-field";
import { ProgressBar } from "@/components/ui/progress-bar";
import { RadioChoice } from "@/components/ui/radio-choice";
import { SelectField } from "@/components/ui/select-field";
import { TextArea } from "@/components/ui/text-area";
import { PITCH_TYPE_WORDS, PITCH_TYPES } from "@/server/domain/clips/clip";
import { MAX_PITCHES_ON_A_CLIP } from "@/server/domain/clips/send-clip";
import { CAMERA_VIEW_WORDS, CAMERA_VIEWS } from "@/server/domain/mechanics/delivery";
import { cameraPlace } from "@/server/domain/mechanics/handedness";
import type { ThrowingHand } from "@/server/domain/people/person";
import styles from "./clip-card.module.css";
import { type ClipItem, fieldOf, isUnderWay, progressInWords, type SaidOfClip } from "./clip-item";
import { NoCopyNote } from "./no-copy-note";

/** What a {@link ClipCard} takes. */
export interface ClipCardProps {
  item: ClipItem;
  /** Its place among the clips that will be sent, from 0. */
  place: number;
  pitcher: { givenName: string; throws: ThrowingHand };
  said: SaidOfClip;
  errors: Readonly<Record<string, string>>;
  onSay: (said: Partial<SaidOfClip>) => void;
  onHold: () => void;
  onGoOn: () => void;
  onTakeBack: () => void;
}

const VIEW_OPTIONS = CAMERA_VIEWS.map((view) => ({ value: view, label: CAMERA_VIEW_WORDS[view] }));
const PITCH_OPTIONS = PITCH_TYPES.map((pitch) => ({ value: pitch, label: PITCH_TYPE_WORDS[pitch] }));

/** One clip: how far it is, and what the family says of it. */
export function ClipCard(props: ClipCardProps) {
  const { item, place } = props;
  return (
    <li className={styles.card} aria-label={`Clip ${place + 1}`}>
      <div className={styles.film}>
        <div className={styles.picture}>
          {item.pictureUrl ? (
            // biome-ignore lint/performance/noImgElement: a picture of this device, or one served by right
            <img src={item.pictureUrl} alt="" />
          ) : null}
        </div>
        <div className={styles.state}>
          <p className={styles.name}>{item.name}</p>
          <Standing {...props} />
        </div>
      </div>
      {item.standing === "refused" ? <Notice kind="refusal">{item.sentence}</Notice> : <Saying {...props} />}
      <NoCopyNote conversion={item.conversion} />
    </li>
  );
}

function Standing({ item, onHold, onGoOn, onTakeBack }: ClipCardProps) {
  const { standing } = item;
  return (
    <>
      {isUnderWay(standing) ? (
        <ProgressBar
          label={standing === "sending" ? "Sending" : "Upload"}
          value={item.sentBytes}
          max={Math.max(1, item.byteCount)}
          words={progressInWords(item)}
        />
      ) : standing === "ready" ? (
        <p className={styles.ready}>Uploaded, not sent yet</p>
      ) : null}
      <div className={styles.acts}>
        {standing === "sending" || standing === "broken" ? (
          <Button isSmall onPress={onHold}>
            Hold
          </Button>
        ) : null}
        {standing === "held" || standing === "stopped" ? (
          <Button isSmall onPress={onGoOn}>
            Go on
          </Button>
        ) : null}
        <Button isSmall variant="link" onPress={onTakeBack}>
          {standing === "refused" ? "Put away" : "Take back"}
        </Button>
      </div>
    </>
  );
}

function Saying({ place, pitcher, said, errors, onSay }: ClipCardProps) {
  const errorOf = (field: keyof SaidOfClip) => errors[fieldOf(place, field)];
  return (
    <div className={styles.fields}>
      <RadioChoice
        label="Where did the camera stand?"
        hint={`The chest turns to the open side: for ${pitcher.givenName}, ${pitcher.throws}-handed, ${cameraPlace(pitcher.throws, "open_side")}.`}
        name={fieldOf(place, "view")}
        error={errorOf("view")}
        options={VIEW_OPTIONS}
        value={said.view}
        onChange={(value) => onSay({ view: CAMERA_VIEWS.find((view) => view === value) ?? null })}
        isRequired
      />
      <FormRow>
        <NumberField
          label="Pitches thrown"
          hint="0 for dry work, and for a second camera on the same pitches."
          name={fieldOf(place, "pitchesThrown")}
          error={errorOf("pitchesThrown")}
          value={said.pitchesThrown}
          onChange={(pitchesThrown) => onSay({ pitchesThrown })}
          min={0}
          max={MAX_PITCHES_ON_A_CLIP}
          isRequired
        />
        <SelectField
          label="Pitch type"
          hint="If it was one."
          options={PITCH_OPTIONS}
          value={said.pitchType}
          onChange={(value) => onSay({ pitchType: PITCH_TYPES.find((pitch) => pitch === value) ?? null })}
          placeholder="Not said"
          isOptional
        />
      </FormRow>
      {said.pitchesThrown ? (
        <Checkbox
          label="These pitches are on the log already"
          hint="As part of a game or another outing, so that nothing counts twice."
          isSelected={said.alreadyOnLog}
          onChange={(alreadyOnLog) => onSay({ alreadyOnLog })}
        />
      ) : null}
      <TextArea
        label="Note for the coach"
        value={said.note}
        onChange={(note) => onSay({ note })}
        maxLength={1000}
        rows={2}
        isOptional
      />
    </div>
  );
}
