"use client";
import { Button } from "@/components/ui/button";
import type { Checkpoint } from "@/server/domain/mechanics/checkpoint";
import { GUIDE_WORDS, type MarkGuide } from "@/server/domain/mechanics/mark-guide";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import { ofClip } from "./picture-list";
import { markLine, measureOutcome } from "./picture-words";
import styles from "./room-picture.module.css";
import type { PictureTools } from "./use-picture-tools";

/** Under a checkpoint: what of it can be measured and shown on the frame in sight, and what was. */
export function CheckpointTools({ checkpoint, tools }: { checkpoint: Checkpoint; tools: PictureTools }) {
  const { id, name, measure, guide } = checkpoint;
  const { measures, marks } = ofClip(tools);
  const guides: MarkGuide[] = guide === null ? ["pencil", "note"] : [guide, "pencil", "note"];
  return (
    <>
      {measure ? (
        <Button
          variant="link"
          onPress={() => tools.measure(measure, id)}
          aria-label={`Measure ${MEASURES[measure].words.toLowerCase()}: ${name}`}
        >
          Measure
        </Button>
      ) : null}
      {[...new Set(guides)].map((each) => (
        <Button
          key={each}
          variant="link"
          onPress={() => tools.mark(each, id)}
          aria-label={`Show ${GUIDE_WORDS[each].toLowerCase()}: ${name}`}
        >
          {GUIDE_WORDS[each]}
        </Button>
      ))}
      <ul className={styles.own}>
        {measures
          .filter((row) => row.checkpointId === id)
          .map((row) => (
            <li key={row.id}>
              <Button variant="link" onPress={() => tools.openMeasure(row)}>
                {MEASURES[row.kind].words} {measureOutcome(row, tools)}, frame {row.frame + 1}
              </Button>
            </li>
          ))}
        {marks
          .filter((row) => row.checkpointId === id)
          .map((row) => (
            <li key={row.id}>
              <Button variant="link" onPress={() => tools.openMark(row)}>
                {markLine(row)}
              </Button>
            </li>
          ))}
      </ul>
    </>
  );
}
