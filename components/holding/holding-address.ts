import { wordOf } from "@/components/academy/asked-for";
import { DELIVERY_PHASES, type Phase } from "@/server/domain/mechanics/delivery";

/** Which corrections the ledger is asked for; null stands for all. */
export interface HoldingPlace {
  phase: Phase | null;
  checkpointId: string | null;
  coachId: string | null;
}

/** Ids are no longer than this; a longer one is nobody's. */
const LONGEST_ID = 64;

/**
 * The corrections that an address names; what is missing or makes no sense stands for all.
 * @example holdingPlace({ phase: "stride" }).phase // "stride"
 */
export function holdingPlace(search: Partial<Record<string, string | string[]>>): HoldingPlace {
  return {
    phase: wordOf(search.phase, DELIVERY_PHASES),
    checkpointId: idOf(search.checkpoint),
    coachId: idOf(search.coach),
  };
}

/**
 * The address of the ledger of such corrections.
 * @example holdingHref({ phase: null, checkpointId: "head-steady", coachId: null }) // "/academy/holding?checkpoint=head-steady"
 */
export function holdingHref({ phase, checkpointId, coachId }: HoldingPlace): string {
  const query = new URLSearchParams({
    ...(phase === null ? {} : { phase }),
    ...(checkpointId === null ? {} : { checkpoint: checkpointId }),
    ...(coachId === null ? {} : { coach: coachId }),
  });
  return query.size === 0 ? "/academy/holding" : `/academy/holding?${query}`;
}

function idOf(text: string | string[] | undefined): string | null {
  return typeof text === "string" && text !== "" && text.length <= LONGEST_ID ? text : null;
}
