"use client";

import type { ReactNode } from "react";
import { Tabs as AriaTabs, Tab, TabList, TabPanel } from "react-aria-components/Tabs";
import styles from "./tabs.module.css";

/** One leaf of a {@link Tabs}. */
export interface TabEntry {
  key: string;
  label: string;
  content: ReactNode;
  isDisabled?: boolean;
}

/** What a {@link Tabs} takes. */
export interface TabsProps {
  /** What the leaves are of; read out. */
  label: string;
  tabs: readonly TabEntry[];
  selected?: string;
  defaultSelected?: string;
  onSelect?: (key: string) => void;
}

/** Several leaves in one place, one in sight. For places of their own address use links instead. */
export function Tabs({ label, tabs, selected, defaultSelected, onSelect }: TabsProps) {
  return (
    <AriaTabs
      {...(selected === undefined ? {} : { selectedKey: selected })}
      {...(defaultSelected === undefined ? {} : { defaultSelectedKey: defaultSelected })}
      onSelectionChange={(key) => onSelect?.(String(key))}
    >
      <TabList aria-label={label} className={styles.list}>
        {tabs.map((tab) => (
          <Tab key={tab.key} id={tab.key} isDisabled={tab.isDisabled} className={styles.tab}>
            {tab.label}
          </Tab>
        ))}
      </TabList>
      {tabs.map((tab) => (
        <TabPanel key={tab.key} id={tab.key} className={styles.panel}>
          {tab.content}
        </TabPanel>
      ))}
    </AriaTabs>
  );
}
