"use client";

import { Button } from "react-aria-components/Button";
import { Text } from "react-aria-components/Text";
import {
  UNSTABLE_Toast as AriaToast,
  UNSTABLE_ToastRegion as AriaToastRegion,
  UNSTABLE_ToastContent as ToastContent,
  UNSTABLE_ToastQueue as ToastQueue,
} from "react-aria-components/Toast";
import { Icon } from "./icons";
import styles from "./toast.module.css";

/** What a toast says, and the way back where there is one. */
export interface ToastMessage {
  text: string;
  /** E.g. "Undo". */
  actionText?: string;
  onAction?: () => void;
}

/** A message without an act goes after this long; one with an act stays until it is answered or closed. */
export const TOAST_SHOWN_MS = 6000;

const queue = new ToastQueue<ToastMessage>({ maxVisibleToasts: 3 });

/** Says in passing that something was done. Never for a refusal: that belongs beside what was refused. */
export function showToast(message: ToastMessage): void {
  queue.add(message, message.onAction ? {} : { timeout: TOAST_SHOWN_MS });
}

/** Where toasts appear and are announced; `UiProvider` holds the only one. */
export function ToastRegion() {
  return (
    <AriaToastRegion queue={queue} className={styles.region} aria-label="What was just done">
      {({ toast }) => (
        <AriaToast toast={toast} className={styles.toast}>
          <ToastContent className={styles.text}>
            <Text slot="title">{toast.content.text}</Text>
          </ToastContent>
          {toast.content.onAction ? (
            <Button
              className={styles.act}
              onPress={() => {
                toast.content.onAction?.();
                queue.close(toast.key);
              }}
            >
              {toast.content.actionText ?? "Undo"}
            </Button>
          ) : null}
          <Button slot="close" className={styles.close} aria-label="Close">
            <Icon name="close" />
          </Button>
        </AriaToast>
      )}
    </AriaToastRegion>
  );
}
