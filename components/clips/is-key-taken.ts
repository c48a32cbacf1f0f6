/** A key typed into a field, or one that a control or a dialog uses itself, is none for the room. */
export function isKeyTaken(event: KeyboardEvent, { isAltFree = false } = {}): boolean {
  if (event.defaultPrevented || event.ctrlKey || event.metaKey) return true;
  if (event.altKey && !isAltFree) return true;
  if (!(event.target instanceof Element)) return false;
  if (
    event.target.closest(
      "input, textarea, select, [contenteditable], [role=dialog], [role=alertdialog], [role=radiogroup], [role=tablist], [role=menu], [role=listbox]",
    )
  )
    return true;
  return event.key === " " && event.target.closest("button, a, summary") !== null;
}
