"use client";

import type { ReactElement } from "react";
import { Tooltip as AriaTooltip, TooltipTrigger } from "react-aria-components/Tooltip";
import styles from "./tooltip.module.css";

/** A few words on a button under the pointer or the focus. Never the only place where something is said. */
export function Tooltip({ text, children }: { text: string; children: ReactElement }) {
  return (
    <TooltipTrigger delay={400} closeDelay={0}>
      {children}
      <AriaTooltip className={styles.tip} offset={6}>
        {text}
      </AriaTooltip>
    </TooltipTrigger>
  );
}
