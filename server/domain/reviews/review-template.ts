import { z } from "zod";
import type { Checkpoint } from "@/server/domain/mechanics/checkpoint";
import { DRAFT_LIMITS, type ReviewDraft } from "./draft";
import { type MarkedClip, placeToShow, type ShownPlace } from "./place-to-show";

/** Bounds on a template. Ages in whole years; common practice, no source. */
export const TEMPLATE_LIMITS = { nameLength: 60, lines: 12, youngest: 4, oldest: 99 } as const;

/** What a line becomes on the slip. */
export const TEMPLATE_LINE_KINDS = ["keep", "correction"] as const;

/** One thing an academy usually says: a strength, or a cue with its drill (empty when there is none). */
export const templateLineSchema = z
  .strictObject({
    kind: z.enum(TEMPLATE_LINE_KINDS),
    checkpointId: z.string().min(1, "Choose a checkpoint.").max(60),
    words: z.string().trim().min(1, "Enter a few words.").max(DRAFT_LIMITS.cueLength),
    drill: z.string().trim().max(DRAFT_LIMITS.drillLength),
  })
  .refine(({ kind, drill }) => kind === "correction" || drill === "", "A keep has no drill.");
export type TemplateLine = z.infer<typeof templateLineSchema>;

const age = z.int().min(TEMPLATE_LIMITS.youngest).max(TEMPLATE_LIMITS.oldest);
const isOnce = (lines: readonly TemplateLine[]) =>
  new Set(lines.map(({ kind, checkpointId }) => `${kind} ${checkpointId}`)).size === lines.length;

/** What an academy usually says in a review of an age group; both ages belong to it. */
export const reviewTemplateSchema = z
  .strictObject({
    name: z.string().trim().min(1, "Enter a few words.").max(TEMPLATE_LIMITS.nameLength),
    fromAge: age,
    toAge: age,
    lines: z
      .array(templateLineSchema)
      .min(1, "Enter at least one line.")
      .max(TEMPLATE_LIMITS.lines, `At most ${TEMPLATE_LIMITS.lines} lines.`)
      .refine(isOnce, "Name each checkpoint once as a keep and once as a correction."),
  })
  .refine(({ fromAge, toAge }) => fromAge <= toAge, {
    path: ["toAge"],
    message: "The older age comes second.",
  });
export type ReviewTemplate = z.infer<typeof reviewTemplateSchema>;

/** Those for an athlete of this age, the narrowest group first. */
export function templatesForAge<Row extends Pick<ReviewTemplate, "fromAge" | "toAge">>(
  templates: readonly Row[],
  ageYears: number,
): Row[] {
  const span = ({ fromAge, toAge }: Row) => toAge - fromAge;
  return templates
    .filter(({ fromAge, toAge }) => fromAge <= ageYears && ageYears <= toAge)
    .sort((a, b) => span(a) - span(b));
}

/** What a template is laid over. */
export interface TemplateFacts {
  /** Those the academy offers. */
  checkpoints: readonly Checkpoint[];
  /** What the athlete already works on. */
  openCheckpointIds: readonly string[];
  /** The most that may be open at a time, those open already included. */
  maxOpen: number;
  clips: readonly MarkedClip[];
  inSight: ShownPlace;
  newId: () => string;
}

/** A line that was not put on the slip, and why. */
export interface LineLeftOut {
  name: string;
  why: string;
}

/** A draft with a template laid over it. */
export interface TemplateLaid {
  document: ReviewDraft;
  added: { keeps: number; corrections: number };
  leftOut: LineLeftOut[];
}

/**
 * Puts the lines of a template on the slip, to be looked through: each on the frame of its moment. Left out is what is
 * on the slip or open already, what is not offered or cannot be seen here, and what would be more than the most at a time.
 */
export function layTemplate(
  document: ReviewDraft,
  lines: readonly TemplateLine[],
  facts: TemplateFacts,
): TemplateLaid {
  const nothing: TemplateLaid = { document, added: { keeps: 0, corrections: 0 }, leftOut: [] };
  return lines.reduce((laid, line) => layLine(laid, line, facts), nothing);
}

function layLine(laid: TemplateLaid, line: TemplateLine, facts: TemplateFacts): TemplateLaid {
  const checkpoint = facts.checkpoints.find((each) => each.id === line.checkpointId);
  const leave = (why: string) => ({
    ...laid,
    leftOut: [...laid.leftOut, { name: checkpoint?.name ?? line.words, why }],
  });
  if (checkpoint === undefined) return leave("not offered any more");
  const why = whyLeftOut(laid.document, line, facts);
  if (why !== null) return leave(why);
  const place = placeToShow(checkpoint, facts.clips, facts.inSight);
  if (place === null) return leave("not seen from here");
  return put(laid, line, { id: facts.newId(), phase: checkpoint.phase, ...place });
}

function whyLeftOut(document: ReviewDraft, line: TemplateLine, facts: TemplateFacts): string | null {
  const isSame = (row: { checkpointId: string | null }) => row.checkpointId === line.checkpointId;
  if (line.kind === "keep") {
    if (document.keeps.some(isSame)) return "on the slip already";
    return document.keeps.length < DRAFT_LIMITS.keeps ? null : `${DRAFT_LIMITS.keeps} keeps are the most`;
  }
  if (document.corrections.some(isSame)) return "on the slip already";
  if (facts.openCheckpointIds.includes(line.checkpointId)) return "open already";
  const open = facts.openCheckpointIds.length + document.corrections.length;
  return open < facts.maxOpen ? null : `${facts.maxOpen} are the most at a time`;
}

function put(
  { document, added, leftOut }: TemplateLaid,
  { kind, checkpointId, words, drill }: TemplateLine,
  place: ShownPlace & Pick<Checkpoint, "id" | "phase">,
): TemplateLaid {
  const row = { ...place, checkpointId, voiceId: null };
  if (kind === "keep") {
    const keeps = [...document.keeps, { ...row, text: words }];
    return { document: { ...document, keeps }, added: { ...added, keeps: added.keeps + 1 }, leftOut };
  }
  const corrections = [...document.corrections, { ...row, cue: words, drill }];
  return {
    document: { ...document, corrections },
    added: { ...added, corrections: added.corrections + 1 },
    leftOut,
  };
}

/**
 * What laying a template did, in words.
 * @example "2 corrections and 1 keep are on the slip: look them through. Left out: Hips lead (open already)."
 */
export function laidInWords({ added, leftOut }: Pick<TemplateLaid, "added" | "leftOut">): string {
  const counts = [counted(added.corrections, "correction"), counted(added.keeps, "keep")].filter(Boolean);
  const isOne = added.corrections + added.keeps === 1;
  const first =
    counts.length === 0
      ? "Nothing was put on the slip."
      : `${counts.join(" and ")} ${isOne ? "is" : "are"} on the slip: look ${isOne ? "it" : "them"} through.`;
  if (leftOut.length === 0) return first;
  return `${first} Left out: ${leftOut.map(({ name, why }) => `${name} (${why})`).join(", ")}.`;
}

function counted(count: number, noun: string): string {
  return count === 0 ? "" : `${count} ${noun}${count === 1 ? "" : "s"}`;
}
