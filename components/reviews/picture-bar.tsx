"use client";
import type { ReactNode } from "react";
import { PlacingBar } from "@/components/measures/placing-bar";
import type { PointsInHand } from "@/components/measures/use-points-in-hand";
import { Button } from "@/components/ui/button";
import { TextField } from "@/components/ui/text-field";
import { GUIDE_WORDS } from "@/server/domain/mechanics/mark-guide";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import { DRAFT_LIMITS } from "@/server/domain/reviews/draft";
import { PictureChooser } from "./picture-chooser";
import type { PictureTool } from "./picture-tool";
import { measureOutcome } from "./picture-words";
import styles from "./room-picture.module.css";
import type { PictureTools } from "./use-picture-tools";

/** What the tool in hand asks for, a row of the room's foot; nothing while there is none. */
export function PictureBar({ tools }: { tools: PictureTools }) {
  const asked = askedBy(tools);
  return asked === null ? null : <div className={styles.inFoot}>{asked}</div>;
}

function askedBy(tools: PictureTools): ReactNode {
  const { tool, points, pencil } = tools;
  if (!tool) return null;
  if (tool.kind === "choose") return <PictureChooser tools={tools} of={tool.of} />;
  if (tool.kind === "refused") return <Refused tools={tools} sentence={tool.sentence} />;
  if (tool.kind === "hold") return <Hold tools={tools} from={tool.frame} />;
  if (tool.kind === "pencil" && pencil) return <PencilBar tools={tools} />;
  if (tool.kind === "measure" && points) return <MeasureBar {...{ tools, tool, points }} />;
  if (tool.kind === "guide" && points) return <GuideBar {...{ tools, tool, points }} />;
  return null;
}

function Refused({ tools, sentence }: { tools: PictureTools; sentence: string }) {
  return (
    <section className={styles.bar} aria-label="Not measured">
      <p className={styles.asked} role="alert">
        {sentence}
      </p>
      <div className={styles.acts}>
        <Button onPress={tools.putDown}>All right</Button>
      </div>
    </section>
  );
}

function Hold({ tools, from }: { tools: PictureTools; from: number }) {
  const { player, endHold, putDown, room, clip } = tools;
  const held = { kind: "finish_hold" as const, points: [], frame: from, untilFrame: player.inHand };
  const isBefore = player.inHand < from;
  return (
    <section className={styles.bar} aria-label={MEASURES.finish_hold.words}>
      <p className={styles.asked}>
        <b>{MEASURES.finish_hold.words}</b> From frame {from + 1}: step to the last frame on which it is still
        held, then Enter.
      </p>
      <p className={styles.outcome} role="status">
        {isBefore ? "This frame comes before it." : measureOutcome(held, { room, clip })}
      </p>
      <div className={styles.acts}>
        <Button isDisabled={isBefore} onPress={endHold}>
          Held to frame {player.inHand + 1}
        </Button>
        <Button onPress={putDown}>Leave it</Button>
      </div>
    </section>
  );
}

function PencilBar({ tools: { pencil } }: { tools: PictureTools }) {
  if (!pencil) return null;
  return (
    <section className={styles.bar} aria-label={GUIDE_WORDS.pencil}>
      <p className={styles.asked}>
        <b>{GUIDE_WORDS.pencil}</b> Draw in one go, or press corner by corner. By keys: arrows, then Enter for
        each corner, Enter twice to end.
      </p>
      <div className={styles.acts}>
        <Button isDisabled={pencil.points.length === 0} onPress={pencil.back}>
          A corner back
        </Button>
        <Button isDisabled={!pencil.finish} onPress={() => pencil.finish?.()}>
          End the line
        </Button>
        <Button onPress={pencil.leave}>Done</Button>
      </div>
    </section>
  );
}

interface MeasureBarProps {
  tools: PictureTools;
  tool: Extract<PictureTool, { kind: "measure" }>;
  points: PointsInHand;
}

function MeasureBar({ tools, tool, points }: MeasureBarProps) {
  const row = tools.draft.document.measures.find((each) => each.id === tool.id);
  return (
    <PlacingBar
      hand={points}
      title={MEASURES[tool.measure].words}
      outcome={row ? measureOutcome(row, tools) : null}
    />
  );
}

interface GuideBarProps {
  tools: PictureTools;
  tool: Extract<PictureTool, { kind: "guide" }>;
  points: PointsInHand;
}

function GuideBar({ tools, tool, points }: GuideBarProps) {
  const row = tools.draft.document.marks.find((each) => each.id === tool.id);
  return (
    <PlacingBar hand={points} title={GUIDE_WORDS[tool.guide]}>
      {row && tool.guide === "note" ? (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            tools.putDown();
          }}
        >
          <TextField
            label="A few words"
            value={row.text}
            maxLength={DRAFT_LIMITS.markTextLength}
            autoFocus
            onChange={(text) =>
              tools.change({ of: "marks", id: row.id, act: "words", before: row, after: { ...row, text } })
            }
          />
        </form>
      ) : null}
    </PlacingBar>
  );
}
