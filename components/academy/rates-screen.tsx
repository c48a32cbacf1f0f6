"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import { ACTS_COLUMN, Table } from "@/components/ui/table";
import type { Answers } from "@/components/wire/answers";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { CHARGE_KINDS, type ChargeKind, chargeKindLabel } from "@/server/domain/ledger/charge-kind";
import { formatMoney } from "@/server/domain/money/money";
import { dayInWords } from "@/server/domain/time/words";
import { AcademyPage } from "./academy-page";
import { AcademyPlace } from "./academy-place";
import { PriceDialog } from "./price-dialog";

type Rate = Answers["rates"]["list"]["rates"][number];

/** What a {@link RatesScreen} takes. */
export interface RatesScreenProps {
  currency: string;
  rates: readonly Rate[];
  today: string;
}

/** What each kind of work costs, since when, and from when it will cost something else. */
export function RatesScreen({ currency, rates, today }: RatesScreenProps) {
  const [pricing, setPricing] = useState<ChargeKind | null>(null);
  const remove = useCommand((api, input: { rateId: string }, once) => api.rates.remove.mutate(input, once));
  const past = rates.filter((rate) => rate.effectiveTo !== null && rate.effectiveTo <= today);
  return (
    <AcademyPage>
      <PageHeading
        question="What does each kind of work cost?"
        place={<AcademyPlace />}
        detail="For each athlete, under the price in force on the day. A new price begins on a day of its own; what was charged before stays."
      />
      <CommandProblem problem={remove.problem} />
      <Table
        caption="Prices"
        isCaptionHidden
        rows={CHARGE_KINDS.map((kind) => ({ kind, ...stateOf(rates, kind, today) }))}
        rowKey={(row) => row.kind}
        columns={[
          { key: "kind", heading: "Kind", isRowHeading: true, cell: (row) => chargeKindLabel(row.kind) },
          {
            key: "now",
            heading: "Today",
            align: "number",
            cell: (row) => (row.now ? formatMoney(row.now.priceCents, row.now.currency) : "no price"),
          },
          {
            key: "since",
            heading: "Since",
            cell: (row) => (row.now ? dayInWords(row.now.effectiveFrom, { withYear: true }) : ""),
          },
          {
            key: "later",
            heading: "Later",
            cell: (row) =>
              row.later.map((rate) => (
                <LaterPrice key={rate.id} rate={rate} onRemove={() => void remove.run({ rateId: rate.id })} />
              )),
          },
          {
            ...ACTS_COLUMN,
            cell: (row) => (
              <Button
                isSmall
                onPress={() => setPricing(row.kind)}
                aria-label={`Set a price: ${chargeKindLabel(row.kind)}`}
              >
                Set a price
              </Button>
            ),
          },
        ]}
      />
      {past.length > 0 ? <PastPrices rates={past} /> : null}
      {pricing ? (
        <PriceDialog kind={pricing} currency={currency} today={today} onClose={() => setPricing(null)} />
      ) : null}
    </AcademyPage>
  );
}

function stateOf(rates: readonly Rate[], kind: ChargeKind, today: string) {
  const own = rates.filter((rate) => rate.kind === kind);
  const holds = (rate: Rate) =>
    rate.effectiveFrom <= today && (rate.effectiveTo === null || today < rate.effectiveTo);
  return { now: own.find(holds), later: own.filter((rate) => rate.effectiveFrom > today) };
}

function LaterPrice({ rate, onRemove }: { rate: Rate; onRemove: () => void }) {
  const words = `${formatMoney(rate.priceCents, rate.currency)} from ${dayInWords(rate.effectiveFrom, { withYear: true })}`;
  return (
    <div>
      {words}{" "}
      <Button isSmall variant="link" onPress={onRemove} aria-label={`Take out: ${words}`}>
        Take out
      </Button>
    </div>
  );
}

function PastPrices({ rates }: { rates: readonly Rate[] }) {
  return (
    <Section title="Earlier prices" count={rates.length}>
      <Table
        caption="Prices that no longer hold"
        isCaptionHidden
        rows={rates}
        rowKey={(rate) => rate.id}
        columns={[
          { key: "kind", heading: "Kind", isRowHeading: true, cell: (rate) => chargeKindLabel(rate.kind) },
          {
            key: "price",
            heading: "Price",
            align: "number",
            cell: (rate) => formatMoney(rate.priceCents, rate.currency),
          },
          {
            key: "from",
            heading: "From",
            cell: (rate) => dayInWords(rate.effectiveFrom, { withYear: true }),
          },
          {
            key: "to",
            heading: "Until before",
            cell: (rate) => (rate.effectiveTo ? dayInWords(rate.effectiveTo, { withYear: true }) : ""),
          },
        ]}
      />
    </Section>
  );
}
