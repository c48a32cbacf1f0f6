import type { Metadata } from "next";
import { LogWithoutSignal } from "@/components/throwing/log-without-signal";
import { PageHeading } from "@/components/ui/page-heading";

export const metadata: Metadata = { title: "No signal" };

/** Opens without the academy: it holds nothing about anybody, and logs for whom the device remembers. */
export default function WithoutSignalPage() {
  return (
    <>
      <PageHeading question="What was thrown?" />
      <LogWithoutSignal />
    </>
  );
}
