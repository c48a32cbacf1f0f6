"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { PageHeading } from "@/components/ui/page-heading";
import { AcademyPlace } from "./academy-place";
import type { Site } from "./site";
import { SiteDialog } from "./site-dialog";
import { SitePart } from "./site-part";

/** Where the academy works: each site with its hours, closed days and lanes. */
export function SitesScreen({ sites, isAdmin }: { sites: readonly Site[]; isAdmin: boolean }) {
  const [isAdding, setIsAdding] = useState(false);
  const live = sites.filter((site) => !site.isRetired);
  const retired = sites.filter((site) => site.isRetired);
  return (
    <>
      <PageHeading
        question="Where do we work, and when is it open?"
        place={<AcademyPlace />}
        detail="Promises are counted in these hours, and sessions are booked on these lanes, by each site’s own clock."
        actions={isAdmin ? <Button onPress={() => setIsAdding(true)}>Add a site</Button> : null}
      />
      {live.map((site) => (
        <SitePart key={site.siteId} site={site} isAdmin={isAdmin} />
      ))}
      {retired.length > 0 ? (
        <p>
          <small>Retired: {retired.map((site) => site.name).join(", ")}. What took place there stays.</small>
        </p>
      ) : null}
      {isAdding ? <SiteDialog onClose={() => setIsAdding(false)} /> : null}
    </>
  );
}
