"use client";
import { Button } from "@/components/ui/button";
import styles from "./room-slip.module.css";
import type { Saying } from "./use-saying";

/** The academy's usual reviews of this age, each put on the slip by one press, to be looked through there. */
export function RoomUsual({ saying }: { saying: Saying }) {
  const { templates, lay, templateButtons } = saying;
  if (templates.length === 0) return null;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would be announced as part of a form
    <div ref={templateButtons} className={styles.usual} role="group" aria-label="The usual review">
      {templates.map((each) => (
        <Button key={each.id} isSmall onPress={() => lay(each)}>
          Put on the slip: {each.name}
        </Button>
      ))}
    </div>
  );
}
