"use client";
import { useRouter } from "next/navigation";
import { Button } from "@/components/ui/button";
import { ComboField } from "@/components/ui/combo-field";
import { Icon } from "@/components/ui/icons";
import styles from "./sessions.module.css";

/** What a {@link WhomForm} takes. */
export interface WhomFormProps {
  everybody: readonly { athleteId: string; name: string; isOwn: boolean }[];
  chosenIds: readonly string[];
}

/** Whom a time is looked for: one athlete, or several for a group. The choice is the page's address. */
export function WhomForm({ everybody, chosenIds }: WhomFormProps) {
  const router = useRouter();
  const chosen = everybody.filter((one) => chosenIds.includes(one.athleteId));
  const others = everybody
    .filter((one) => !chosenIds.includes(one.athleteId))
    .sort((a, b) => Number(b.isOwn) - Number(a.isOwn));
  const go = (ids: readonly string[]) =>
    router.push(ids.length === 0 ? "/calendar/find" : `/calendar/find?athletes=${ids.join(",")}`);
  return (
    <div className={styles.whom}>
      {chosen.length > 0 ? (
        <ul className={styles.chosen} aria-label="For">
          {chosen.map((one) => (
            <li key={one.athleteId}>
              <Button
                isSmall
                aria-label={`Without ${one.name}`}
                onPress={() => go(chosenIds.filter((id) => id !== one.athleteId))}
              >
                {one.name}
                <Icon name="close" />
              </Button>
            </li>
          ))}
        </ul>
      ) : null}
      {chosen.length < 8 ? (
        <ComboField
          key={chosenIds.join(",")}
          label={chosen.length === 0 ? "For whom?" : "And for whom else?"}
          isOptional={chosen.length > 0}
          options={others.map((one) => ({
            value: one.athleteId,
            label: one.name,
            ...(one.isOwn ? { hint: "Your athlete" } : {}),
          }))}
          onChange={(id) => id && go([...chosenIds, id])}
          emptyText="Nobody by that name"
          hint={chosen.length === 0 ? "The times that fit follow at once." : undefined}
        />
      ) : null}
    </div>
  );
}
