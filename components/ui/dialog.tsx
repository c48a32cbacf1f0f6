"use client";

import type { ReactNode } from "react";
import { Button } from "react-aria-components/Button";
import { Dialog as AriaDialog } from "react-aria-components/Dialog";
import { Heading } from "react-aria-components/Heading";
import { Modal, ModalOverlay } from "react-aria-components/Modal";
import styles from "./dialog.module.css";
import { Icon } from "./icons";
import { joinClasses } from "./join-classes";

/** What a {@link Dialog} takes. */
export interface DialogProps {
  title: string;
  isOpen: boolean;
  onOpenChange: (isOpen: boolean) => void;
  children: ReactNode;
  /** Wider, for tables and pairs of pictures. */
  isWide?: boolean;
  /** `alertdialog` interrupts and is not left by a click outside it. Default `dialog`. */
  role?: "dialog" | "alertdialog";
}

/** One matter in front of the page: holds the focus, Escape leaves it, and the focus goes back to where it was. */
export function Dialog({ title, isOpen, onOpenChange, children, isWide, role = "dialog" }: DialogProps) {
  return (
    <ModalOverlay
      className={styles.veil}
      isOpen={isOpen}
      onOpenChange={onOpenChange}
      isDismissable={role === "dialog"}
    >
      <Modal className={joinClasses(styles.panel, isWide && styles.wide)}>
        <AriaDialog className={styles.dialog} role={role}>
          <div className={styles.head}>
            <Heading slot="title" className={styles.title}>
              {title}
            </Heading>
            {role === "dialog" ? (
              <Button className={styles.close} aria-label="Close" onPress={() => onOpenChange(false)}>
                <Icon name="close" />
              </Button>
            ) : null}
          </div>
          {children}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}

/** The actions that end a dialog, the primary one first. */
export function DialogActions({ children }: { children: ReactNode }) {
  return <div className={styles.actions}>{children}</div>;
}
