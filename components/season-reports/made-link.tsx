"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { Notice } from "@/components/ui/notice";
import type { NewLink } from "./make-link";
import styles from "./report-tools.module.css";

/** The address of a new link, told this once. */
export function MadeLink({ link: { address }, until }: { link: NewLink; until: string }) {
  const [isCopied, setCopied] = useState(false);
  if (address === null) {
    return (
      <Notice kind="attention" title="The link was made, and its address was lost on the way.">
        It is kept nowhere. End this link and make another.
      </Notice>
    );
  }
  return (
    <Notice
      kind="held"
      title={`The link is open until ${until}.`}
      actions={
        <Button
          onPress={() =>
            void navigator.clipboard.writeText(address).then(
              () => setCopied(true),
              () => {},
            )
          }
        >
          {isCopied ? "Copied" : "Copy it"}
        </Button>
      }
    >
      <p className={styles.address}>{address}</p>
      <p>It is shown this once: copy it now.</p>
    </Notice>
  );
}
