import type { Answers } from "@/components/wire/answers";

/** A site as its screens show it. */
export type Site = Answers["sites"]["list"][number];
