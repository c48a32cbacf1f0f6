import type { JudgementScore } from "@/server/domain/mechanics/judgement";
import type { DraftKind } from "@/server/domain/reviews/draft";
import type { SeenClip } from "./clip-rows";
import type { Athlete } from "./roster";
import type { Theme } from "./themes";

/** A review or a check that is about to be written. */
export interface Sending {
  athlete: Athlete;
  roundId: string;
  kind: DraftKind;
  clips: readonly SeenClip[];
  openedAtMs: number;
  sentAtMs: number;
  note?: string | undefined;
}

/** A theme as it was judged on a clip. */
export interface Judged {
  theme: Theme;
  clip: SeenClip;
  score: JudgementScore;
}
