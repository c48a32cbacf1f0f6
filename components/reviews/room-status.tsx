import { clockInWords } from "@/server/domain/time/words";
import styles from "./room.module.css";
import type { DraftStatus } from "./room-draft-keeper";

/** How the draft stands, in a few words. */
export function RoomStatus({ status, zone }: { status: DraftStatus; zone: string }) {
  const isFine = status.kind === "saved" || status.kind === "saving";
  return (
    <span className={styles.status} data-attention={isFine ? undefined : ""} role="status">
      {statusWords(status, zone)}
    </span>
  );
}

function statusWords(status: DraftStatus, zone: string): string {
  switch (status.kind) {
    case "saved":
      return status.savedAtMs === null
        ? "Nothing written yet"
        : `Saved ${clockInWords(status.savedAtMs, zone)}`;
    case "saving":
      return "Saving…";
    case "offline":
      return "Not saved yet: offline, will try again";
    case "conflict":
      return "Not saved: there is a newer draft";
    case "stopped":
      return "Not saved";
  }
}
