import { isLetterKey, letterKeysAreOn } from "@/components/ui/letter-keys";

/**
 * A key typed into a field, or one that a control or a dialog uses itself, is none for the room; nor is a letter where
 * they are off.
 * @param isChoiceFree for keys that a group of choices does not use itself
 */
export function isKeyTaken(event: KeyboardEvent, { isAltFree = false, isChoiceFree = false } = {}): boolean {
  if (event.defaultPrevented || event.ctrlKey || event.metaKey) return true;
  if (event.altKey && !isAltFree) return true;
  if (isLetterKey(event) && !letterKeysAreOn()) return true;
  if (!(event.target instanceof Element)) return false;
  // A scale that was pulled keeps the focus: it has its own keys alone, the letters are still the room's.
  if (event.target.matches("input[type=range]")) return SCALE_KEYS.test(event.key);
  if (event.target.closest(TAKERS) || (!isChoiceFree && event.target.closest("[role=radiogroup]")))
    return true;
  return event.key === " " && event.target.closest("button, a, summary") !== null;
}

const TAKERS =
  "input, textarea, select, [contenteditable], [role=dialog], [role=alertdialog], [role=tablist], [role=menu], [role=listbox]";

const SCALE_KEYS = /^(Arrow|Page|Home$|End$)/;
