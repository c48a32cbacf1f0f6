"use client";

import { useRouter } from "next/navigation";
import { SelectField } from "@/components/ui/select-field";
import type { HoldingLedgerView } from "@/server/api/evidence/holding-shape";
import { DELIVERY_PHASES, PHASE_WORDS } from "@/server/domain/mechanics/delivery";
import styles from "./holding.module.css";
import { type HoldingPlace, holdingHref } from "./holding-address";

/** Stands for no choice in a list of choices. */
const ALL = "all";

const orNull = (value: string | null) => (value === ALL ? null : value);

/** Which corrections. Each choice is an address of its own, so that a ledger can be kept and sent on. */
export function HoldingFilters({
  choices,
  place,
}: Pick<HoldingLedgerView, "choices"> & { place: HoldingPlace }) {
  const router = useRouter();
  const go = (to: Partial<HoldingPlace>) => router.push(holdingHref({ ...place, ...to }));
  const named = (every: string, options: readonly { id: string; name: string }[]) => [
    { value: ALL, label: every },
    ...options.map(({ id, name }) => ({ value: id, label: name })),
  ];
  return (
    <div className={styles.filters} data-print="no">
      <SelectField
        label="Phase"
        options={named(
          "Every phase",
          choices.phases.map((phase) => ({ id: phase, name: PHASE_WORDS[phase] })),
        )}
        value={place.phase ?? ALL}
        onChange={(value) => go({ phase: DELIVERY_PHASES.find((phase) => phase === value) ?? null })}
      />
      <SelectField
        label="Checkpoint"
        options={named("Every checkpoint", choices.checkpoints)}
        value={place.checkpointId ?? ALL}
        onChange={(value) => go({ checkpointId: orNull(value) })}
      />
      <SelectField
        label="Coach"
        options={named("Every coach", choices.coaches)}
        value={place.coachId ?? ALL}
        onChange={(value) => go({ coachId: orNull(value) })}
      />
    </div>
  );
}
