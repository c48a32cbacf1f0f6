"use client";
import { useRouter } from "next/navigation";
import { SelectField } from "@/components/ui/select-field";
import type { Answers } from "@/components/wire/answers";
import { armsHref, BOARD_ORDERS, type BoardOrder, type BoardPlace, EVERY_COACH } from "./arms-address";
import styles from "./arms-board.module.css";

/** What a {@link BoardFilters} takes. */
export interface BoardFiltersProps {
  board: Pick<Answers["arms"]["board"], "coaches" | "teams" | "sites">;
  place: BoardPlace;
  myPersonId: string;
}

/** Stands for no choice in a list of choices. */
const ALL = "all";

const ORDER_WORDS: Record<BoardOrder, string> = { limit: "Soonest limit first", name: "By name" };

/** Which arms, and in which order. Each choice is an address of its own, so that a board can be kept and sent on. */
export function BoardFilters({ board, place, myPersonId }: BoardFiltersProps) {
  const router = useRouter();
  const go = (to: Partial<BoardPlace>) => router.push(armsHref({ ...place, page: 1, ...to }));
  const coaches = board.coaches.map(({ id, name }) => ({
    value: id,
    label: id === myPersonId ? `${name} (you)` : name,
  }));
  const orNull = (value: string | null) => (value === ALL ? null : value);
  return (
    <div className={styles.filters} data-print="no">
      <SelectField
        label="Coach"
        options={[{ value: EVERY_COACH, label: "Every coach" }, ...coaches]}
        value={place.coach ?? EVERY_COACH}
        onChange={(coach) => go({ coach })}
      />
      {board.teams.length > 0 ? (
        <SelectField
          label="Team"
          options={[
            { value: ALL, label: "Every team" },
            ...board.teams.map((name) => ({ value: name, label: name })),
          ]}
          value={place.team ?? ALL}
          onChange={(team) => go({ team: orNull(team) })}
        />
      ) : null}
      {board.sites.length > 1 ? (
        <SelectField
          label="Site"
          options={[
            { value: ALL, label: "Every site" },
            ...board.sites.map(({ id, name }) => ({ value: id, label: name })),
          ]}
          value={place.site ?? ALL}
          onChange={(site) => go({ site: orNull(site) })}
        />
      ) : null}
      <SelectField
        label="Order"
        options={BOARD_ORDERS.map((value) => ({ value, label: ORDER_WORDS[value] }))}
        value={place.order}
        onChange={(order) => go({ order: order === "name" ? "name" : "limit" })}
      />
    </div>
  );
}
