"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { ConfirmDialog } from "@/components/ui/confirm-dialog";
import { RadioChoice } from "@/components/ui/radio-choice";
import { ACTS_COLUMN, Table } from "@/components/ui/table";
import { TextField } from "@/components/ui/text-field";
import { CommandProblem } from "@/components/wire/command-problem";
import { FormDialog } from "@/components/wire/form-dialog";
import { textOf } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";
import type { LaneKind } from "@/server/domain/calendar/session-kind";
import type { Site } from "./site";
import styles from "./site-part.module.css";

type Lane = Site["lanes"][number];
const KIND_WORDS: Record<LaneKind, string> = { mound: "mound", flat: "flat ground, no mound work" };

/** The lanes of a site that can be booked. */
export function LanesPart({ site, isAdmin }: { site: Site; isAdmin: boolean }) {
  const [isAdding, setIsAdding] = useState(false);
  const [retiring, setRetiring] = useState<Lane | null>(null);
  const retire = useCommand((api, input: { laneId: string }, once) =>
    api.sites.retireLane.mutate(input, once),
  );
  async function retireNow() {
    if (retiring) await retire.run({ laneId: retiring.laneId });
    setRetiring(null);
  }
  const live = site.lanes.filter((lane) => !lane.isRetired);
  const retired = site.lanes.filter((lane) => lane.isRetired);
  return (
    <div className={styles.block}>
      <div className={styles.head}>
        <h3>Lanes</h3>
        {isAdmin ? (
          <Button isSmall onPress={() => setIsAdding(true)}>
            Add a lane
          </Button>
        ) : null}
      </div>
      <CommandProblem problem={retire.problem} />
      <Table
        caption={`Lanes of ${site.name}`}
        isCaptionHidden
        onPhone="scroll"
        rows={live}
        rowKey={(lane) => lane.laneId}
        empty="No lane yet: nothing can be booked here."
        columns={[
          { key: "name", heading: "Lane", isRowHeading: true, cell: (lane) => lane.name },
          { key: "kind", heading: "Kind", cell: (lane) => KIND_WORDS[lane.kind] },
          ...(isAdmin
            ? [
                {
                  ...ACTS_COLUMN,
                  cell: (lane: Lane) => (
                    <Button
                      isSmall
                      variant="link"
                      onPress={() => setRetiring(lane)}
                      aria-label={`Retire ${lane.name}`}
                    >
                      Retire
                    </Button>
                  ),
                },
              ]
            : []),
        ]}
      />
      {retired.length > 0 ? <small>Retired: {retired.map((lane) => lane.name).join(", ")}</small> : null}
      {isAdding ? <AddLane site={site} onClose={() => setIsAdding(false)} /> : null}
      <ConfirmDialog
        title={`Retire ${retiring?.name ?? ""}?`}
        confirmText="Retire the lane"
        isOpen={retiring !== null}
        isPending={retire.pending}
        onConfirm={() => void retireNow()}
        onCancel={() => setRetiring(null)}
      >
        Nothing can be booked on it any more. What took place on it stays on record.
      </ConfirmDialog>
    </div>
  );
}

function AddLane({ site, onClose }: { site: Site; onClose: () => void }) {
  const add = useCommand((api, input: { siteId: string; name: string; kind: LaneKind }, once) =>
    api.sites.addLane.mutate(input, once),
  );
  async function submit(data: FormData) {
    const kind = textOf(data, "kind") === "flat" ? "flat" : "mound";
    if (await add.run({ siteId: site.siteId, name: textOf(data, "name"), kind })) onClose();
  }
  return (
    <FormDialog
      title={`Add a lane to ${site.name}`}
      label="Lane"
      submitText="Add the lane"
      command={add}
      onSubmit={submit}
      onClose={onClose}
    >
      <TextField
        label="Name"
        name="name"
        defaultValue={`Lane ${site.lanes.length + 1}`}
        maxLength={60}
        isRequired
        autoFocus
      />
      <RadioChoice
        label="Kind"
        name="kind"
        defaultValue="mound"
        options={[
          { value: "mound", label: "Mound" },
          { value: "flat", label: "Flat ground" },
        ]}
        hint="A mound takes every session; flat ground only those without mound throws."
      />
    </FormDialog>
  );
}
