"use client";
import { filmRatio } from "@/components/clips/film-ratio";
import { FrameImage } from "@/components/clips/frame-image";
import type { ClipPlayer } from "@/components/clips/use-clip-player";
import { useThumbnails } from "@/components/clips/use-thumbnails";
import { CorrectionMark } from "@/components/home/correction-mark";
import { Button } from "@/components/ui/button";
import { RadioChoice } from "@/components/ui/radio-choice";
import { TextArea } from "@/components/ui/text-area";
import type { ClipView, CorrectionView } from "@/server/api/reviews/shapes";
import { PHASE_WORDS } from "@/server/domain/mechanics/delivery";
import { VERDICT_WORDS, VERDICTS, type Verdict } from "@/server/domain/reviews/correction-state";
import { DRAFT_LIMITS } from "@/server/domain/reviews/draft";
import { happeningInWords, practiceInWords } from "./correction-words";
import styles from "./room-check.module.css";
import { type ClipPlace, changeRetirement, changeVerdict } from "./room-edits";
import type { RoomDraft } from "./use-room-draft";

/** What a {@link RoomVerdict} takes. */
export interface RoomVerdictProps {
  number: number;
  correction: CorrectionView;
  draft: RoomDraft<"check">;
  zone: string;
  /** All clips here: each still is drawn from the one it belongs to. */
  clips: readonly ClipView[];
  newer: ClipPlayer;
  /** Shows the frame it was given on, and on the new clip the one chosen for it or the same moment. */
  onShow: () => void;
}

/** One correction: where it was seen, what was done about it, and whether it took. */
export function RoomVerdict(props: RoomVerdictProps) {
  const { number, correction, draft, zone, newer } = props;
  const { document, change } = draft;
  const verdict = document.verdicts.find((row) => row.correctionId === correction.id);
  const retirement = document.retirements.find((row) => row.correctionId === correction.id);
  const here = { clipId: newer.clip.id, frame: newer.inHand };
  return (
    <li className={styles.verdict}>
      <div className={styles.about}>
        <span className={styles.number}>{number}</span>
        <div>
          <p className={styles.cue}>{correction.cue || correction.checkpointName}</p>
          <p className={styles.detail}>
            {correction.checkpointName}, {PHASE_WORDS[correction.phase].toLowerCase()}
            {correction.drill ? `. Drill: ${correction.drill}` : ""}
          </p>
          <p className={styles.detail}>
            <CorrectionMark state={correction.state} cameBack={correction.cameBack} />
          </p>
          <p className={styles.detail}>Practice: {practiceInWords(correction.practisedOn)}</p>
          {correction.happenings.slice(1).map((one) => (
            <p key={`${one.atMs} ${one.kind}`} className={styles.detail}>
              {happeningInWords(one, zone)}
            </p>
          ))}
        </div>
      </div>
      <OldAndNew {...props} chosen={verdict} here={here} />
      {retirement ? (
        <div className={styles.answer}>
          <TextArea
            label="Why is it no longer wanted?"
            rows={2}
            value={retirement.reason}
            maxLength={DRAFT_LIMITS.noteLength}
            onChange={(reason) => change((now) => changeRetirement(now, correction.id, reason))}
          />
          <Button variant="link" onPress={() => change((now) => changeRetirement(now, correction.id, null))}>
            Give a verdict instead
          </Button>
        </div>
      ) : (
        <div className={styles.answer}>
          <RadioChoice
            label="Did it take?"
            options={VERDICTS.map((each) => ({ value: each, label: VERDICT_WORDS[each] }))}
            value={verdict?.verdict ?? null}
            onChange={(chosen) =>
              change((now) =>
                changeVerdict(now, correction.id, { ...frameOf(verdict, here), verdict: chosen as Verdict }),
              )
            }
          />
          <TextArea
            label="Note"
            isOptional
            rows={1}
            value={verdict?.note ?? ""}
            maxLength={DRAFT_LIMITS.noteLength}
            onChange={(note) => change((now) => changeVerdict(now, correction.id, { note }))}
          />
          {correction.state === "held" ? null : (
            <Button variant="link" onPress={() => change((now) => changeRetirement(now, correction.id, ""))}>
              No longer wanted
            </Button>
          )}
        </div>
      )}
    </li>
  );
}

type Chosen = { clipId: string | null; frame: number | null } | undefined;

/** The first verdict takes the frame in sight with it, unless the clip was never moved; later ones leave it alone. */
function frameOf(verdict: Chosen, here: ClipPlace): ClipPlace | object {
  return verdict?.clipId || here.frame === 0 ? {} : here;
}

function OldAndNew(props: RoomVerdictProps & { chosen: Chosen; here: ClipPlace }) {
  const { correction, clips, draft, newer, chosen, here, onShow } = props;
  const isChosenHere = chosen?.clipId === here.clipId && chosen.frame === here.frame;
  return (
    <div className={styles.pair}>
      <Still word="Old" clips={clips} place={correction} none="on no one frame" />
      <Still word="New" clips={clips} place={chosen} none="no frame chosen" />
      <div className={styles.pairActs}>
        <Button isSmall onPress={onShow}>
          Show both
        </Button>
        {isChosenHere ? null : (
          <Button
            isSmall
            isDisabled={newer.picture !== "ready"}
            onPress={() => draft.change((now) => changeVerdict(now, correction.id, here))}
          >
            Use new frame {here.frame + 1}
          </Button>
        )}
      </div>
    </div>
  );
}

interface StillProps {
  word: string;
  clips: readonly ClipView[];
  place: Chosen;
  /** What is said when there is no frame. */
  none: string;
}

function Still({ word, clips, place, none }: StillProps) {
  const clip = clips.find((each) => each.id === place?.clipId);
  const frame = place?.frame ?? null;
  return (
    <figure className={styles.still}>
      <div className={styles.stillFrame} style={clip && { aspectRatio: filmRatio(clip) }}>
        {clip && frame !== null ? <StillPicture clip={clip} frame={frame} /> : null}
      </div>
      <figcaption>
        {word}, {frame === null ? none : `frame ${frame + 1}`}
      </figcaption>
    </figure>
  );
}

function StillPicture({ clip, frame }: { clip: ClipView; frame: number }) {
  const address = useThumbnails(clip, [frame])(frame);
  if (address) return <FrameImage address={address} className={styles.stillImage} />;
  return clip.state === "expired" ? <span>film not kept</span> : null;
}
