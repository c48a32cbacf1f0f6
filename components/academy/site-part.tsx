"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { ConfirmDialog } from "@/components/ui/confirm-dialog";
import { Section } from "@/components/ui/section";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { ClosuresPart } from "./closures-part";
import { LanesPart } from "./lanes-part";
import type { Site } from "./site";
import { SiteDialog } from "./site-dialog";
import styles from "./site-part.module.css";
import { SiteWeek } from "./site-week";

/** One site: where it is, when it is open, when it is not, and its lanes. */
export function SitePart({ site, isAdmin }: { site: Site; isAdmin: boolean }) {
  const [open, setOpen] = useState<"edit" | "retire" | null>(null);
  const retire = useCommand((api, input: { siteId: string }, once) => api.sites.retire.mutate(input, once));
  async function retireNow() {
    await retire.run({ siteId: site.siteId });
    setOpen(null);
  }
  return (
    <Section
      title={site.name}
      aside={
        isAdmin ? (
          <>
            <Button isSmall variant="link" onPress={() => setOpen("edit")}>
              Change name, zone or address
            </Button>
            <Button isSmall variant="link" onPress={() => setOpen("retire")}>
              Retire the site
            </Button>
          </>
        ) : null
      }
    >
      <p className={styles.where}>
        {site.address ? `${site.address}. ` : ""}Clock: {site.zone.replaceAll("_", " ")}.
      </p>
      <CommandProblem problem={retire.problem} />
      <div className={styles.parts}>
        <SiteWeek site={site} isAdmin={isAdmin} />
        <div>
          <LanesPart site={site} isAdmin={isAdmin} />
          <ClosuresPart site={site} isAdmin={isAdmin} />
        </div>
      </div>
      {open === "edit" ? <SiteDialog site={site} onClose={() => setOpen(null)} /> : null}
      <ConfirmDialog
        title={`Retire ${site.name}?`}
        confirmText="Retire the site"
        isOpen={open === "retire"}
        isPending={retire.pending}
        onConfirm={() => void retireNow()}
        onCancel={() => setOpen(null)}
      >
        Nothing can be booked there any more. What took place there stays on record.
      </ConfirmDialog>
    </Section>
  );
}
