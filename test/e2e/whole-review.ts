import type { BrowserContextOptions, Locator, Page } from "@playwright/test";
import type { ClipParameters } from "../../seed/clips/clip-parameters";
import type { ClipTruth } from "../../seed/clips/truth";
import type { Place } from "../../server/domain/reviews/draft";
import type { Moments } from "./six-findings";

/** A film as it was sent, and what is true of it. */
export interface Filmed {
  file: Uint8Array;
  truth: ClipTruth;
  parameters: ClipParameters;
}

/** What somebody does all of a review by, from the queue to the settled round. */
export interface Hands {
  name: string;
  context: BrowserContextOptions;
  press: (target: Locator) => Promise<void>;
  /**
   * Marks the moments, measures the front knee at release, shows it there, says six findings and sends. `before` is
   * called with the places of hip, knee and ankle before anything is said.
   */
  review: (page: Page, filmed: Filmed, before: (joints: readonly Place[]) => Promise<void>) => Promise<void>;
  /** From the first correction the family reads to the second, and on to the next. */
  leaf: (page: Page) => Promise<void>;
  leafOn: (page: Page) => Promise<void>;
  /** Marks the moments of the new clip in the check. */
  markReply: (page: Page, filmed: Filmed) => Promise<void>;
  /** Chooses one of a row of answers, so many steps after the first. */
  judge: (page: Page, group: Locator, steps: number) => Promise<void>;
  settle: (page: Page) => Promise<void>;
}

/** The moments that are marked; the approximate one is left out. */
export function momentsOf({ truth }: Filmed): Moments {
  const { max_external_rotation: _approximate, ...moments } = truth.events;
  return moments;
}

/** The clip that a page shows alone. */
export const figureIn = (page: Page): Locator => page.locator("figure[data-frame]").first();

/** One of the two clips of a check. */
export const sideOf = (page: Page, word: "Old" | "New"): Locator =>
  page.getByRole("figure", { name: new RegExp(`^${word}: `) });
