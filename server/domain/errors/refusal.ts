import type { RefusalDetail } from "./reasons";
import { refusalSentence } from "./sentences";

export type { RefusalDetail, RefusalReason } from "./reasons";

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
