"use client";
import { Button } from "@/components/ui/button";
import { PageHeading } from "@/components/ui/page-heading";

/** What stands in for a page that broke: what happened, what was kept, what to do. */
export default function ErrorPage({
  error,
  reset,
}: {
  error: Error & { digest?: string };
  reset: () => void;
}) {
  return (
    <main id="main" className="lonePage">
      <PageHeading
        question="This page could not be shown"
        detail={`Something went wrong here, not with you. What was saved before is kept.${error.digest ? ` Number for the academy: ${error.digest}.` : ""}`}
        actions={<Button onPress={reset}>Try again</Button>}
      />
    </main>
  );
}
