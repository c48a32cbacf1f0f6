import type { RefusalFacts } from "./reasons";
import { refusalSentence } from "./sentences";

/** The fixed reasons a request may be refused for, each with the facts its screen needs. */
export type RefusalReason = keyof RefusalFacts;

/** One reason with its facts. */
export type RefusalDetail = {
  [Reason in RefusalReason]: { reason: Reason } & RefusalFacts[Reason];
}[RefusalReason];

/**
 * An expected refusal. Procedures throw it; the wire carries `detail` and one sentence that says what happened,
 * what was kept, and what to do.
 */
export class Refusal extends Error {
  readonly detail: RefusalDetail;

  constructor(detail: RefusalDetail) {
    super(refusalSentence(detail));
    this.name = "Refusal";
    this.detail = detail;
  }
}
