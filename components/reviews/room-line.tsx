"use client";
import { type KeyboardEvent, useId, useState } from "react";
import { ToggleButton } from "react-aria-components/ToggleButton";
import { ToggleButtonGroup } from "react-aria-components/ToggleButtonGroup";
import styles from "./room-line.module.css";
import { type LineChoice, lineChoices } from "./room-line-choices";
import type { SayingKind } from "./room-saying";
import { backToClip } from "./use-row-in-hand";
import { SAYING_KEYS, type Saying } from "./use-saying";

const KINDS: readonly { kind: SayingKind; word: string; key: string }[] = [
  { kind: "correction", word: "Correct", key: "C" },
  { kind: "keep", word: "Keep", key: "G" },
];

const other = (kind: SayingKind): SayingKind => (kind === "keep" ? "correction" : "keep");

/** The one line from which everything is written: a few letters of what is seen, and it is on the slip. */
export function RoomLine({ saying }: { saying: Saying }) {
  const id = useId();
  const [typed, setTyped] = useState("");
  const [isOpen, setOpen] = useState(false);
  const [at, setAt] = useState(0);
  const { kind, facts, problem } = saying;
  const choices = lineChoices(typed, kind, facts);
  const active = choices[Math.min(at, choices.length - 1)];

  const close = () => {
    setTyped("");
    setAt(0);
    setOpen(false);
  };
  const choose = (choice: LineChoice, what: SayingKind) => {
    if (!choice.isOff) close();
    saying.choose(choice, what);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.nativeEvent.isComposing) return;
    const acts = new Map<string, () => void>([
      ["Enter", () => active && choose(active, event.shiftKey ? other(kind) : kind)],
      ["ArrowDown", () => setAt((now) => Math.min(now + 1, choices.length - 1))],
      ["ArrowUp", () => setAt((now) => Math.max(now - 1, 0))],
      [
        "Escape",
        () => {
          close();
          backToClip();
        },
      ],
    ]);
    const act = acts.get(event.key);
    if (!act) return;
    event.preventDefault();
    act();
  };

  return (
    <div className={styles.line}>
      <div className={styles.asked}>
        <ToggleButtonGroup
          className={styles.kinds}
          aria-label="What to write"
          selectionMode="single"
          disallowEmptySelection
          selectedKeys={[kind]}
          onSelectionChange={([chosen]) => saying.setKind(chosen === "keep" ? "keep" : "correction")}
        >
          {KINDS.map((each) => (
            <ToggleButton key={each.kind} id={each.kind} className={styles.kind}>
              {each.word} <kbd className={styles.key}>{each.key}</kbd>
            </ToggleButton>
          ))}
        </ToggleButtonGroup>
        <input
          ref={saying.line}
          className={styles.field}
          role="combobox"
          aria-label={kind === "keep" ? "Keep: what is good" : "Correct: what you see"}
          aria-autocomplete="list"
          aria-expanded={isOpen}
          aria-controls={`${id}-list`}
          aria-activedescendant={isOpen && active ? `${id}-${active.id}` : undefined}
          placeholder="Two letters of what you see"
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          enterKeyHint="go"
          maxLength={120}
          value={typed}
          onFocus={() => setOpen(true)}
          onBlur={() => setOpen(false)}
          onChange={(event) => {
            setTyped(event.target.value);
            setAt(0);
            setOpen(true);
          }}
          onKeyDown={onKeyDown}
        />
      </div>
      <p className={styles.problem} role="status">
        {problem}
      </p>
      <Choices
        id={id}
        choices={choices}
        active={active}
        isOpen={isOpen}
        onChoose={(each) => choose(each, kind)}
      />
      <Keys />
    </div>
  );
}

interface ChoicesProps {
  id: string;
  choices: readonly LineChoice[];
  active: LineChoice | undefined;
  isOpen: boolean;
  onChoose: (choice: LineChoice) => void;
}

function Choices({ id, choices, active, isOpen, onChoose }: ChoicesProps) {
  return (
    <div
      id={`${id}-list`}
      role="listbox"
      aria-label="What fits"
      tabIndex={-1}
      className={styles.list}
      hidden={!isOpen}
      // The field keeps the focus, so that the list stays while it is pressed.
      onPointerDown={(event) => event.preventDefault()}
    >
      {choices.map((choice) => (
        // biome-ignore lint/a11y/useKeyWithClickEvents: the field above has the keys
        <div
          key={choice.id}
          id={`${id}-${choice.id}`}
          role="option"
          className={styles.choice}
          aria-selected={choice === active}
          aria-disabled={choice.isOff}
          tabIndex={-1}
          onClick={() => onChoose(choice)}
        >
          <span>{choice.words}</span>
          <span className={styles.facts}>{choice.facts}</span>
        </div>
      ))}
      {choices.length === 0 ? <div className={styles.nothing}>Nothing fits</div> : null}
    </div>
  );
}

function Keys() {
  return (
    <details className={styles.keys}>
      <summary>Keys for writing</summary>
      <dl>
        {SAYING_KEYS.map(([key, act]) => (
          <div key={key}>
            <dt>
              <kbd>{key}</kbd>
            </dt>
            <dd>{act}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
