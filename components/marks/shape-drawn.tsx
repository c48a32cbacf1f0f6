import type { StageGeometry } from "@/components/clips/stage";
import { joinClasses } from "@/components/ui/join-classes";
import type { MarkShape } from "./guide-shapes";
import styles from "./marks.module.css";
import { strokePath } from "./stroke-path";

/** How the picture lies on the screen, as far as drawing on it goes. */
export type PictureStage = Pick<StageGeometry, "widthPx" | "heightPx" | "isMirrored" | "pxPerSource">;

/** Sizes on the screen, in CSS pixels, the same at every zoom. */
const DOT_PX = 4;
const PENCIL_PX = 5;
const EDGE_PX = 1.5;
const WORDS_PX = 14;
/** A letter of the notes is about this much wider than high. Common practice, no source. */
const LETTER_SHARE = 0.56;

/** One shape: light, with a dark edge around it, so that it is seen on any picture. Nothing on a stage not laid out yet. */
export function ShapeDrawn({ shape, stage }: { shape: MarkShape; stage: PictureStage }) {
  if (stage.pxPerSource === 0) return null;
  if (shape.kind === "words") return <Words {...shape} stage={stage} />;
  if (shape.kind === "dot") {
    const radius = DOT_PX / stage.pxPerSource;
    return <circle className={styles.dot} cx={shape.at.x} cy={shape.at.y} r={radius} />;
  }
  if (shape.kind === "stroke") {
    const edge = strokePath(shape.points, (PENCIL_PX + 2 * EDGE_PX) / stage.pxPerSource);
    return (
      <>
        <path className={styles.strokeEdge} d={edge} />
        <path className={styles.stroke} d={strokePath(shape.points, PENCIL_PX / stage.pxPerSource)} />
      </>
    );
  }
  return (
    <>
      <Outline shape={shape} className={styles.edge} />
      <Outline shape={shape} className={styles.line} />
    </>
  );
}

type Lined = Extract<MarkShape, { kind: "line" | "circle" | "arc" }>;

function Outline({ shape, className }: { shape: Lined; className: string | undefined }) {
  if (shape.kind === "circle") {
    return <circle className={className} cx={shape.centre.x} cy={shape.centre.y} r={shape.radiusPx} />;
  }
  const { from, to } = shape;
  if (shape.kind === "line") {
    const dashes = joinClasses(className, shape.isDashed && styles.dashed);
    return <line className={dashes} x1={from.x} y1={from.y} x2={to.x} y2={to.y} />;
  }
  const arc = `A${shape.radiusPx} ${shape.radiusPx} 0 0 ${shape.isClockwise ? 1 : 0} ${to.x} ${to.y}`;
  return <path className={className} d={`M${from.x} ${from.y}${arc}`} />;
}

/** A short note to the right of its dot where there is room, else to the left, and never in mirror writing. */
function Words({ at, text, stage }: { at: { x: number; y: number }; text: string; stage: PictureStage }) {
  const px = 1 / stage.pxPerSource;
  const lines = linesOf(text);
  const wide = (Math.max(...lines.map((each) => each.length)) * WORDS_PX * LETTER_SHARE + 16) * px;
  const high = (lines.length * WORDS_PX * 1.3 + 8) * px;
  const roomRight = stage.isMirrored ? at.x : stage.widthPx - at.x;
  const left = wide + 10 * px <= roomRight ? 10 * px : -wide - 10 * px;
  const top = Math.min(Math.max(-high / 2, -at.y), stage.heightPx - high - at.y);
  return (
    <g transform={`translate(${at.x} ${at.y}) scale(${stage.isMirrored ? -1 : 1} 1)`}>
      <rect className={styles.wordsGround} x={left} y={top} width={wide} height={high} rx={3 * px} />
      <text className={styles.words} fontSize={WORDS_PX * px}>
        {lines.map((each, index) => (
          <tspan
            // biome-ignore lint/suspicious/noArrayIndexKey: the lines of one text never change places
            key={index}
            x={left + 8 * px}
            y={top + (4 + WORDS_PX * (1 + index * 1.3)) * px}
          >
            {each}
          </tspan>
        ))}
      </text>
    </g>
  );
}

/** A note of more than some words is broken in two or more lines. Common practice, no source. */
const LINE_LENGTH = 24;

function linesOf(text: string): string[] {
  const lines = [""];
  for (const word of text.split(/\s+/)) {
    const last = lines.length - 1;
    const joined = `${lines[last]} ${word}`.trim();
    if (joined.length > LINE_LENGTH && lines[last] !== "") lines.push(word);
    else lines[last] = joined;
  }
  return lines;
}
