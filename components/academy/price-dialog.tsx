"use client";
import { useState } from "react";
import { DateField } from "@/components/ui/date-field";
import { FormRow } from "@/components/ui/form";
import { TextField } from "@/components/ui/text-field";
import { FormDialog } from "@/components/wire/form-dialog";
import { textOf } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";
import { type ChargeKind, chargeKindLabel } from "@/server/domain/ledger/charge-kind";
import { minorFromDecimal } from "@/server/domain/money/money";

/** What a {@link PriceDialog} takes. */
export interface PriceDialogProps {
  kind: ChargeKind;
  currency: string;
  today: string;
  onClose: () => void;
}

/** Sets the price of a kind of work from a day on. */
export function PriceDialog({ kind, currency, today, onClose }: PriceDialogProps) {
  const [isUnreadable, setIsUnreadable] = useState(false);
  const save = useCommand(
    (api, input: { kind: ChargeKind; priceCents: number; effectiveFrom: string }, once) =>
      api.rates.setPrice.mutate(input, once),
  );
  async function submit(data: FormData) {
    const priceCents = minorFromDecimal(textOf(data, "priceCents"), currency);
    setIsUnreadable(priceCents === null || priceCents < 0);
    if (priceCents === null || priceCents < 0) return;
    if (await save.run({ kind, priceCents, effectiveFrom: textOf(data, "effectiveFrom") })) onClose();
  }
  const unreadable = isUnreadable
    ? { priceCents: `Enter an amount in ${currency} with a point, such as 85 or 85.50.` }
    : null;
  return (
    <FormDialog
      title={`Price of: ${chargeKindLabel(kind).toLowerCase()}`}
      label="Price"
      submitText="Set the price"
      command={save}
      errors={unreadable}
      onSubmit={submit}
      onClose={onClose}
    >
      <FormRow>
        <TextField
          label="For each athlete"
          name="priceCents"
          inputMode="decimal"
          affix={currency}
          maxLength={12}
          isRequired
          autoFocus
        />
        <DateField label="From" name="effectiveFrom" defaultValue={today} isRequired />
      </FormRow>
    </FormDialog>
  );
}
