"use client";
import { useQuery } from "@tanstack/react-query";
import Link from "next/link";
import { useRouter } from "next/navigation";
import { type FormEvent, useDeferredValue, useEffect, useState } from "react";
import { Button } from "@/components/ui/button";
import { Dialog } from "@/components/ui/dialog";
import { Icon } from "@/components/ui/icons";
import { isLetterKey, letterKeysAreOn } from "@/components/ui/letter-keys";
import { TextField } from "@/components/ui/text-field";
import { useApi } from "@/components/wire/api-provider";
import { destinations } from "./destinations";
import styles from "./go-to.module.css";

/** What a {@link GoTo} takes. */
export interface GoToProps {
  pages: readonly { href: string; label: string }[];
}

/** A search box for people and pages, opened by its button or the slash key; Enter goes to the first. */
export function GoTo({ pages }: GoToProps) {
  const [isOpen, setOpen] = useState(false);
  useEffect(() => {
    function openBySlash(event: KeyboardEvent) {
      if (event.key !== "/" || !isLetterKey(event) || !letterKeysAreOn() || isTyping(event.target)) return;
      event.preventDefault();
      setOpen(true);
    }
    addEventListener("keydown", openBySlash);
    return () => removeEventListener("keydown", openBySlash);
  }, []);
  return (
    <>
      <Button isSmall aria-label="Search people and pages" onPress={() => setOpen(true)}>
        <span className={styles.glass}>
          <Icon name="search" />
        </span>
        <span className={styles.word}>Search</span>
        <kbd className={styles.word}>/</kbd>
      </Button>
      <Dialog title="Go to" isOpen={isOpen} onOpenChange={setOpen}>
        <Search pages={pages} onGo={() => setOpen(false)} />
      </Dialog>
    </>
  );
}

function Search({ pages, onGo }: GoToProps & { onGo: () => void }) {
  const api = useApi();
  const router = useRouter();
  const [text, setText] = useState("");
  const asked = useDeferredValue(text.trim());
  const found = useQuery(
    api.athletes.search.queryOptions(
      { text: asked },
      { enabled: asked !== "", placeholderData: (last) => last },
    ),
  );
  const offered = destinations(pages, found.data ?? [], text);

  function goToFirst(event: FormEvent) {
    event.preventDefault();
    const [first] = offered;
    if (!first) return;
    onGo();
    router.push(first.href);
  }

  return (
    <form onSubmit={goToFirst} className={styles.search}>
      <TextField
        label="A person or a page"
        value={text}
        onChange={setText}
        maxLength={80}
        autoComplete="off"
        autoFocus
      />
      <ul className={styles.list} aria-label="Places to go">
        {offered.map((place) => (
          <li key={place.href}>
            <Link href={place.href} className={styles.place} onClick={onGo}>
              {place.label}
              <span className={styles.hint}>{place.hint}</span>
            </Link>
          </li>
        ))}
      </ul>
      <p className={styles.count} aria-live="polite">
        {wordsFor(offered.length, found.isFetching)}
      </p>
    </form>
  );
}

function wordsFor(count: number, isFetching: boolean): string {
  if (isFetching) return "Looking…";
  if (count === 0) return "Nobody and no page by that name.";
  return "Enter goes to the first.";
}

/** Whether keys belong to what is focused: a field that takes text. */
function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement &&
    target.closest("input, textarea, select, [contenteditable], [role=spinbutton]") !== null
  );
}
