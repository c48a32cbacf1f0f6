import type { Answers } from "@/components/wire/answers";

/** A checkpoint as its screens show it. */
export type KeptCheckpoint = Answers["checkpoints"]["list"][number];
